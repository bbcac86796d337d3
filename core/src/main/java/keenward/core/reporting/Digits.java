package keenward.core.reporting;

/** Fixed-width decimal and hexadecimal text, written without the formatting classes. */
final class Digits {
  private static final String HEXADECIMAL = "0123456789ABCDEF";

  private Digits() {}

  /** {@code number} in decimal, at least {@code width} characters, zeros in front. */
  static String decimal(int number, int width) {
    return padded(Integer.toString(number), width);
  }

  /**
   * {@code number} in upper-case hexadecimal, at least {@code width} characters, zeros in front.
   */
  static String hexadecimal(int number, int width) {
    StringBuilder text = new StringBuilder();
    for (int rest = number; rest != 0; rest >>>= 4) {
      text.insert(0, HEXADECIMAL.charAt(rest & 0xF));
    }
    return padded(text.toString(), width);
  }

  /** True for 0 to 9, A to F and a to f. */
  static boolean isHexadecimal(char character) {
    return Character.digit(character, 16) >= 0 && character < 128;
  }

  /** True for 0 to 9. */
  static boolean isDecimal(char character) {
    return character >= '0' && character <= '9';
  }

  /** Place of the first character of {@code text} in [from, to) that is not decimal, or -1. */
  static int firstNotDecimal(String text, int from, int to) {
    for (int index = from; index < to; index++) {
      if (!isDecimal(text.charAt(index))) {
        return index;
      }
    }
    return -1;
  }

  private static String padded(String text, int width) {
    return "0".repeat(Math.max(0, width - text.length())) + text;
  }
}
