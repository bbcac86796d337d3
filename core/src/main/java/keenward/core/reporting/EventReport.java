package keenward.core.reporting;

/**
 * What a panel reports, without the account: {@code QXYZ GG CCC}.
 *
 * @param qualifier whether it begins, ends or goes on
 * @param code DC-05 event code, 0 to 999; it need not be in the table
 * @param partition 0 to 99; 0 when none is given
 * @param zoneOrUser 0 to 999; 0 when none is given
 */
public record EventReport(Qualifier qualifier, int code, int partition, int zoneOrUser) {

  /** Largest number of a zone or user: three digits. */
  public static final int MOST_ZONE_OR_USER = 999;

  private static final int LENGTH = 11;

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException when a number does not fit its digits
   */
  public EventReport {
    requireRange("event code", code, 999);
    requireRange("partition", partition, 99);
    requireRange("zone or user", zoneOrUser, MOST_ZONE_OR_USER);
  }

  /** Text as DC-09 carries it, such as {@code 1131 01 015}. */
  public String text() {
    return qualifier.digit()
        + Digits.decimal(code, 3)
        + ' '
        + Digits.decimal(partition, 2)
        + ' '
        + Digits.decimal(zoneOrUser, 3);
  }

  /** What happened, such as {@code perimeter zone, new event}. */
  public String event() {
    return EventCodes.meaning(code) + ", " + qualifierMeaning();
  }

  /** In words, such as {@code perimeter zone, new event, partition 1, zone 15}. */
  public String description() {
    StringBuilder words = new StringBuilder(event());
    if (partition > 0) {
      words.append(", partition ").append(partition);
    }
    if (zoneOrUser > 0) {
      String subject = EventCodes.find(code).map(EventCode::subject).orElse(Subject.ZONE).word();
      words.append(", ").append(subject).append(' ').append(zoneOrUser);
    }
    return words.toString();
  }

  /** Reads {@code QXYZ GG CCC}. */
  public static Decoded<EventReport> parse(String text) {
    if (text.length() != LENGTH) {
      return Decoded.refused(
          Math.min(text.length(), LENGTH),
          "event of " + text.length() + " characters",
          "11 characters, as in 1131 01 015");
    }
    for (int index = 0; index < LENGTH; index++) {
      boolean blank = index == 4 || index == 7;
      char character = text.charAt(index);
      if (blank ? character != ' ' : !Digits.isDecimal(character)) {
        return Decoded.refused(
            index, "'" + character + "' in an event", blank ? "a blank" : "a digit 0 to 9");
      }
    }
    return of(text.charAt(0), text.substring(1, 4), text.substring(5, 7), text.substring(8), 0);
  }

  /** Builds a report from digits already known to be decimal. */
  static Decoded<EventReport> of(
      char qualifier, String code, String partition, String zoneOrUser, int position) {
    return Qualifier.find(qualifier - '0')
        .map(known ->
            Decoded.of(
                new EventReport(
                    known,
                    Integer.parseInt(code),
                    Integer.parseInt(partition),
                    Integer.parseInt(zoneOrUser))))
        .orElseGet(() ->
            Decoded.refused(
                position,
                "qualifier " + qualifier,
                "1 (new event), 3 (restore) or 6 (still present)"));
  }

  private String qualifierMeaning() {
    return EventCodes.find(code)
        .map(known -> known.use().meaning(qualifier))
        .orElse(qualifier.meaning());
  }

  private static void requireRange(String name, int number, int most) {
    if (number < 0 || number > most) {
      throw new IllegalArgumentException(name + " " + number + ": expected 0 to " + most);
    }
  }
}
