package keenward.files.panel;

import java.util.ArrayList;
import java.util.List;

/** Splits text at a separator, keeping empty pieces. */
final class Splitter {
  private Splitter() {}

  static List<String> split(String text, String separator) {
    List<String> pieces = new ArrayList<>();
    int from = 0;
    for (int at = text.indexOf(separator); at >= 0; at = text.indexOf(separator, from)) {
      pieces.add(text.substring(from, at));
      from = at + separator.length();
    }
    pieces.add(text.substring(from));
    return pieces;
  }
}
