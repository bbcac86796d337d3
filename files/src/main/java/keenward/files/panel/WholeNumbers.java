package keenward.files.panel;

/** Reads small whole numbers. */
final class WholeNumbers {
  private WholeNumbers() {}

  /** The number, or -1 where the text is none from 0 to 999,999,999. */
  static int parse(String text) {
    if (text.isEmpty()
        || text.length() > 9
        || !text.chars().allMatch(each -> each >= '0' && each <= '9')) {
      return -1;
    }
    return Integer.parseInt(text);
  }
}
