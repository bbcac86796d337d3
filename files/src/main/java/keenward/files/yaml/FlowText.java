package keenward.files.yaml;

/** What stands between the values of a map in braces: blanks, line ends, comments, a comma. */
final class FlowText {

  private FlowText() {}

  /** The comma that follows a value ending at this offset; -1 when the map ends without one. */
  static int comma(String text, int valueEnd) {
    int i = valueEnd;
    while (i < text.length()) {
      char c = text.charAt(i);
      if (c == ',') {
        return i;
      }
      if (c == '}') {
        return -1;
      }
      i = c == '#' ? Lines.end(text, i) : i + 1;
    }
    return -1;
  }
}
