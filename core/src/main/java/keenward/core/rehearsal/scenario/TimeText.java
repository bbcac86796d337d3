package keenward.core.rehearsal.scenario;

/** Times and lengths of time as text; they are held in tenths of a second. */
public final class TimeText {

  static final int SECOND = 10;
  static final int MINUTE = 60 * SECOND;
  static final int HOUR = 60 * MINUTE;
  static final int DAY = 24 * HOUR;

  private TimeText() {}

  /**
   * A time on the clock, such as {@code 07:58:00} or {@code day 2 00:10:00.5}.
   *
   * @param tenths since midnight of the first day
   */
  public static String clock(int tenths) {
    int day = tenths / DAY;
    int rest = tenths % DAY;
    int fraction = rest % SECOND;
    return (day == 0 ? "" : "day " + (day + 1) + " ")
        + twoDigits(rest / HOUR)
        + ":"
        + twoDigits(rest % HOUR / MINUTE)
        + ":"
        + twoDigits(rest % MINUTE / SECOND)
        + (fraction == 0 ? "" : "." + fraction);
  }

  private static String twoDigits(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }

  /** A length of time, such as {@code 30 s}, {@code 2.5 s}, {@code 5 min} or {@code 24 h}. */
  public static String length(int tenths) {
    if (tenths >= 2 * HOUR && tenths % HOUR == 0) {
      return tenths / HOUR + " h";
    }
    if (tenths >= 2 * MINUTE && tenths % MINUTE == 0) {
      return tenths / MINUTE + " min";
    }
    int fraction = tenths % SECOND;
    return tenths / SECOND + (fraction == 0 ? "" : "." + fraction) + " s";
  }
}
