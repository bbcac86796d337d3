package keenward.core.dialogue.description;

import java.util.List;
import java.util.Map;

/**
 * A kind of keypad.
 *
 * @param name name in the description
 * @param shows what it can show
 * @param lines lines of its display
 * @param columns characters of a line
 * @param words for {@code WORDS} and {@code LAMPS}: everything it can show
 * @param digits for {@code WORDS}: how many digits it can show besides the words
 * @param keys keys that can be pressed on it, each with how long it is held
 * @param lagTenths how long after a press the next one is heard
 * @param mirrors whether it shares one programming session with the other mirroring keypads
 * @param restartTenths how long it is out of use after leaving
 */
public record KeypadKind(
    String name,
    Shows shows,
    int lines,
    int columns,
    List<String> words,
    int digits,
    Map<String, Integer> keys,
    int lagTenths,
    boolean mirrors,
    int restartTenths) {
  public KeypadKind {
    words = List.copyOf(words);
    keys = Ordered.copyOf(keys);
  }

  /** What a keypad can show. */
  public enum Shows {
    /** Any text that fits. */
    TEXT,
    /** A fixed set of words and some digits. */
    WORDS,
    /** Lamps, by name. */
    LAMPS
  }
}
