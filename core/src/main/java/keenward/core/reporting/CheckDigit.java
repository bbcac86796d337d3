package keenward.core.reporting;

/**
 * The check digit of a DC-05 message: the values of all sixteen digits add up to a multiple of 15.
 * The digit 0 counts ten, B to F count eleven to fifteen, A is not sent.
 */
public final class CheckDigit {
  private static final int MODULUS = 15;
  private static final String BY_VALUE = "?1234567890BCDEF";

  private CheckDigit() {}

  /** Value of a digit, 1 to 15, or -1 when DC-05 does not send it. */
  public static int valueOf(char digit) {
    return digit == '?' ? -1 : BY_VALUE.indexOf(digit);
  }

  /**
   * The digit that completes {@code digits}.
   *
   * @throws IllegalArgumentException when a character is not a DC-05 digit
   */
  public static char of(String digits) {
    // A sum that is already a multiple needs fifteen more, not nothing: no digit counts zero.
    return BY_VALUE.charAt(MODULUS - sum(digits) % MODULUS);
  }

  /** True when {@code digits}, the check digit last, add up to a multiple of 15. */
  public static boolean isRight(String digits) {
    return sum(digits) % MODULUS == 0;
  }

  private static int sum(String digits) {
    int sum = 0;
    for (int index = 0; index < digits.length(); index++) {
      int value = valueOf(digits.charAt(index));
      if (value < 0) {
        throw new IllegalArgumentException("not a DC-05 digit: " + digits.charAt(index));
      }
      sum += value;
    }
    return sum;
  }
}
