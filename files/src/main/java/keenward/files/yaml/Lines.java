package keenward.files.yaml;

/** Line ends of a text; CR, LF and CR LF are line ends. */
final class Lines {

  private Lines() {}

  /** The end of the line that holds the offset, before its line end. */
  static int end(String text, int offset) {
    int i = offset;
    while (i < text.length() && !isBreak(text.charAt(i))) {
      i++;
    }
    return i;
  }

  /** The start of the line that holds the offset. */
  static int start(String text, int offset) {
    int i = offset;
    while (i > 0 && !isBreak(text.charAt(i - 1))) {
      i--;
    }
    return i;
  }

  /** The offset after the line end that stands at this offset, if one does. */
  static int afterBreak(String text, int offset) {
    if (text.startsWith("\r\n", offset)) {
      return offset + 2;
    }
    return offset < text.length() ? offset + 1 : offset;
  }

  /** The line end that a text uses: its first one; LF when it has none. */
  static String separator(String text) {
    int first = end(text, 0);
    return first == text.length() ? "\n" : text.substring(first, afterBreak(text, first));
  }

  private static boolean isBreak(char c) {
    return c == '\n' || c == '\r';
  }
}
