package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.List;

/** Splits text into words. */
final class Words {
  private Words() {}

  static List<String> split(String text) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int place = 0; place <= text.length(); place++) {
      if (place < text.length() && text.charAt(place) != ' ') {
        word.append(text.charAt(place));
      } else if (!word.isEmpty()) {
        words.add(word.toString());
        word.setLength(0);
      }
    }
    return words;
  }
}
