package keenward.core.reporting;

/**
 * The time stamp of a DC-09 frame, {@code _HH:MM:SS,MM-DD-YYYY} in UTC.
 *
 * @param year 1 to 9999
 * @param month 1 to 12
 * @param day 1 to the length of the month
 * @param hour 0 to 23
 * @param minute 0 to 59
 * @param second 0 to 59
 */
public record FrameTime(int year, int month, int day, int hour, int minute, int second) {
  /** Characters of a time stamp. */
  static final int LENGTH = 20;

  private static final String SHAPE = "_00:00:00,00-00-0000";
  private static final String EXPECTED = "_HH:MM:SS,MM-DD-YYYY in UTC";

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException when the calendar or the clock has no such time
   */
  public FrameTime {
    if (!exists(year, month, day, hour, minute, second)) {
      throw new IllegalArgumentException("no such time; expected " + EXPECTED);
    }
  }

  /** The twenty characters as sent. */
  public String text() {
    return "_"
        + Digits.decimal(hour, 2)
        + ':'
        + Digits.decimal(minute, 2)
        + ':'
        + Digits.decimal(second, 2)
        + ','
        + Digits.decimal(month, 2)
        + '-'
        + Digits.decimal(day, 2)
        + '-'
        + Digits.decimal(year, 4);
  }

  /** Reads a time stamp. */
  public static Decoded<FrameTime> parse(String text) {
    if (text.length() != LENGTH) {
      return Decoded.refused(
          Math.min(text.length(), LENGTH),
          "time stamp of " + text.length() + " characters",
          "20 characters, " + EXPECTED);
    }
    for (int index = 0; index < LENGTH; index++) {
      char shape = SHAPE.charAt(index);
      char character = text.charAt(index);
      if (shape == '0' ? !Digits.isDecimal(character) : character != shape) {
        return Decoded.refused(index, "'" + character + "' in a time stamp", EXPECTED);
      }
    }
    int hour = number(text, 1, 3);
    int minute = number(text, 4, 6);
    int second = number(text, 7, 9);
    int month = number(text, 10, 12);
    int day = number(text, 13, 15);
    int year = number(text, 16, 20);
    return exists(year, month, day, hour, minute, second)
        ? Decoded.of(new FrameTime(year, month, day, hour, minute, second))
        : Decoded.refused(0, "a time that does not exist", EXPECTED);
  }

  private static int number(String text, int from, int to) {
    return Integer.parseInt(text.substring(from, to));
  }

  private static boolean exists(int year, int month, int day, int hour, int minute, int second) {
    return year >= 1
        && year <= 9999
        && month >= 1
        && month <= 12
        && day >= 1
        && day <= daysIn(year, month)
        && hour >= 0
        && hour <= 23
        && minute >= 0
        && minute <= 59
        && second >= 0
        && second <= 59;
  }

  private static int daysIn(int year, int month) {
    return switch (month) {
      case 2 -> year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 29 : 28;
      case 4, 6, 9, 11 -> 30;
      default -> 31;
    };
  }
}
