package keenward.core.plan;

/**
 * A time of day on the site's clock.
 *
 * @param minuteOfDay minutes since midnight, 0 to 1439
 */
public record TimeOfDay(int minuteOfDay) {

  public TimeOfDay {
    if (minuteOfDay < 0 || minuteOfDay >= 24 * 60) {
      throw new IllegalArgumentException("a day has minutes 0 to 1439, not " + minuteOfDay);
    }
  }

  /** As hh:mm. */
  @Override
  public String toString() {
    int hours = minuteOfDay / 60;
    int minutes = minuteOfDay % 60;
    return (hours < 10 ? "0" : "") + hours + ":" + (minutes < 10 ? "0" : "") + minutes;
  }
}
