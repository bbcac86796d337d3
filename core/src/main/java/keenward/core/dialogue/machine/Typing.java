package keenward.core.dialogue.machine;

import java.util.List;

/**
 * What is being entered on the present screen.
 *
 * @param text characters typed so far
 * @param position place of the cursor in a list, or -1 if it was not moved
 * @param pending key that waits for another press: a shift key, or the letter key being tapped
 * @param count taps after the first of the pending key, or transmissions heard
 * @param bits options chosen so far
 * @param words words chosen so far
 * @param touched whether anything was entered
 */
public record Typing(
    String text,
    int position,
    String pending,
    int count,
    long bits,
    List<String> words,
    boolean touched) {
  /** Nothing was entered. */
  public static final Typing EMPTY = new Typing("", -1, "", 0, 0, List.of(), false);

  public Typing {
    words = List.copyOf(words);
  }

  Typing withText(String newText) {
    return new Typing(newText, position, pending, count, bits, words, true);
  }

  Typing withPosition(int newPosition) {
    return new Typing(text, newPosition, pending, count, bits, words, touched);
  }

  Typing withPending(String newPending, int newCount) {
    return new Typing(text, position, newPending, newCount, bits, words, touched);
  }

  Typing withBits(long newBits) {
    return new Typing(text, position, pending, count, newBits, words, true);
  }

  Typing withWords(List<String> newWords) {
    return new Typing(text, position, pending, count, bits, newWords, true);
  }

  Typing touchedAt(int newPosition) {
    return new Typing(text, newPosition, pending, count, bits, words, true);
  }
}
