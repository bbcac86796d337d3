package keenward.core.reporting;

/**
 * A subscriber's account as DC-05 sends it: four digits, 0 to 9 and B to F.
 *
 * @param digits the four digits
 */
public record Account(String digits) {
  private static final int LENGTH = 4;

  /**
   * Checks the digits.
   *
   * @throws IllegalArgumentException when they are not an account
   */
  public Account {
    if (parse(digits, digits.length()) instanceof Decoded.Refused<String> refused) {
      throw new IllegalArgumentException(refused.message());
    }
  }

  /** Reads an account. */
  public static Decoded<Account> parse(String text) {
    return switch (parse(text, text.length())) {
      case Decoded.Value<String> digits -> Decoded.of(new Account(digits.value()));
      case Decoded.Refused<String> refused -> refused.as();
    };
  }

  private static Decoded<String> parse(String text, int length) {
    if (length != LENGTH) {
      return Decoded.refused(
          Math.min(length, LENGTH), "account of " + length + " digits", "4 digits, as in 1234");
    }
    for (int index = 0; index < LENGTH; index++) {
      char digit = text.charAt(index);
      if (CheckDigit.valueOf(digit) < 0) {
        return Decoded.refused(
            index,
            "'" + digit + "' in an account",
            digit == 'A' ? "0 to 9 or B to F (DC-05 sends no A)" : "0 to 9 or B to F");
      }
    }
    return Decoded.of(text);
  }
}
