package keenward.core.reporting;

/**
 * A whole DC-05 message, {@code ACCT MT QXYZ GG CCC S}.
 *
 * @param account who reports
 * @param messageType 18 (preferred) or 98
 * @param report what is reported
 */
public record EventMessage(Account account, int messageType, EventReport report) {
  /** The message type that a sender should use. */
  public static final int PREFERRED_TYPE = 18;

  /** The other message type; a receiver takes both. */
  public static final int OPTIONAL_TYPE = 98;

  private static final int LENGTH = 16;

  /**
   * Checks the message type.
   *
   * @throws IllegalArgumentException when it is neither 18 nor 98
   */
  public EventMessage {
    if (messageType != PREFERRED_TYPE && messageType != OPTIONAL_TYPE) {
      throw new IllegalArgumentException("message type " + messageType + ": expected 18 or 98");
    }
  }

  /** The sixteen digits as sent, check digit last. */
  public String digits() {
    String report = this.report.text();
    String digits =
        account.digits()
            + messageType
            + report.substring(0, 4)
            + report.substring(5, 7)
            + report.substring(8);
    return digits + CheckDigit.of(digits);
  }

  /** The same with blanks between the fields, for people. */
  public String text() {
    String digits = digits();
    return account.digits() + ' ' + messageType + ' ' + report.text() + ' ' + digits.charAt(15);
  }

  /** Reads sixteen digits; blanks between fields are ignored. */
  public static Decoded<EventMessage> parse(String text) {
    StringBuilder digits = new StringBuilder();
    int[] place = new int[LENGTH + 1];
    for (int index = 0; index < text.length(); index++) {
      char digit = text.charAt(index);
      if (digit == ' ') {
        continue;
      }
      if (digits.length() == LENGTH) {
        return Decoded.refused(index, "a seventeenth digit", "16 digits");
      }
      if (CheckDigit.valueOf(digit) < 0) {
        return Decoded.refused(index, "'" + digit + "' in a message", "0 to 9 or B to F");
      }
      place[digits.length()] = index;
      digits.append(digit);
    }
    if (digits.length() < LENGTH) {
      return Decoded.refused(
          text.length(), "message of " + digits.length() + " digits", "16 digits");
    }
    return fields(digits.toString(), place);
  }

  private static Decoded<EventMessage> fields(String digits, int[] place) {
    int letter = Digits.firstNotDecimal(digits, 4, LENGTH - 1);
    if (letter >= 0) {
      return Decoded.refused(
          place[letter], "'" + digits.charAt(letter) + "' outside the account", "a digit 0 to 9");
    }
    char right = CheckDigit.of(digits.substring(0, LENGTH - 1));
    if (digits.charAt(LENGTH - 1) != right) {
      return Decoded.refused(
          place[LENGTH - 1], "check digit " + digits.charAt(LENGTH - 1), "check digit " + right);
    }
    int type = Integer.parseInt(digits.substring(4, 6));
    if (type != PREFERRED_TYPE && type != OPTIONAL_TYPE) {
      return Decoded.refused(place[4], "message type " + digits.substring(4, 6), "18 or 98");
    }
    Decoded<EventReport> report =
        EventReport.of(
            digits.charAt(6),
            digits.substring(7, 10),
            digits.substring(10, 12),
            digits.substring(12, 15),
            place[6]);
    return switch (report) {
      case Decoded.Refused<EventReport> refused -> refused.as();
      case Decoded.Value<EventReport> value ->
          Decoded.of(new EventMessage(new Account(digits.substring(0, 4)), type, value.value()));
    };
  }
}
