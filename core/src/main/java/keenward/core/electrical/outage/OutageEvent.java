package keenward.core.electrical.outage;

import java.util.Optional;
import keenward.core.electrical.Explained;

/**
 * Something that happens while the mains is off.
 *
 * @param kind what
 * @param device the device it happens to
 * @param line what, with its reckoning; the value is hours since the mains failed
 */
public record OutageEvent(Kind kind, Optional<String> device, Explained line) {

  /** What may happen, in the order in which things of one moment are told. */
  public enum Kind {
    /** The mains fails. */
    MAINS_FAILS("mains-fails"),
    /** The failure is signalled to the monitoring centre. */
    FAILURE_REPORTED("failure-reported"),
    /** The time at rest that the regime wants is over; the alarm begins. */
    ALARM_BEGINS("alarm-begins"),
    /** A device stops drawing its current in alarm. */
    DEVICE_STOPS("device-stops"),
    /** The battery is so low that it is signalled. */
    LOW_BATTERY("low-battery"),
    /** A device gets less than its least voltage. */
    DEVICE_DIES("device-dies"),
    /** What the regime wants is over. */
    DUTY_ENDS("duty-ends"),
    /** The battery is switched off, or there is nothing left in it. */
    BATTERY_ENDS("battery-ends"),
    /** A year is over, and the battery would still last by its load alone. */
    YEAR_OVER("year-over");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** In one word, for JSON. */
    public String word() {
      return word;
    }
  }

  /** Hours since the mains failed. */
  public double hours() {
    return line.value();
  }

  /** When, such as {@code 14 h 23 min}, rounded down; "at most" while a current is not known. */
  public String when() {
    return line.certainty().words() + time(hours());
  }

  /** Hours as hours and whole minutes, rounded down. */
  public static String time(double hours) {
    // Binary noise must not take a minute off a round figure.
    long minutes = (long) Math.floor(hours * 60 + 1e-6);
    return minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
  }
}
