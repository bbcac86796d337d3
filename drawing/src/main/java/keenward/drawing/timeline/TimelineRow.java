package keenward.drawing.timeline;

/**
 * One thing that happens, or lasts, in a lane.
 *
 * @param seconds when it happens or begins, from the start of the rehearsal
 * @param untilSeconds when it ends; the same as {@code seconds} for something that just happens
 * @param lane name of its lane, such as zones, keypad, sounder, centre
 * @param label what happens, in a few words
 * @param because why, in a few words; empty for nothing
 * @param kind how it is marked
 */
public record TimelineRow(
    double seconds, double untilSeconds, String lane, String label, String because, Kind kind) {

  /** What sort of thing it is; the shape of its mark says so without colour. */
  public enum Kind {
    /** A person does something. */
    ACTION,
    /** The system notices or changes something. */
    CHANGE,
    /** The system warns: an entry delay, a fault. */
    WARNING,
    /** An alarm. */
    ALARM,
    /** A signal reaches the monitoring centre. */
    SIGNAL
  }

  public TimelineRow {
    if (!(seconds >= 0) || !(untilSeconds >= seconds) || Double.isInfinite(untilSeconds)) {
      throw new IllegalArgumentException(
          "a row lasts from 0 or later to the same or a later time: "
              + seconds
              + " to "
              + untilSeconds);
    }
  }

  /** Something that just happens. */
  public static TimelineRow mark(double seconds, String lane, String label, Kind kind) {
    return new TimelineRow(seconds, seconds, lane, label, "", kind);
  }

  /** Something that lasts. */
  public static TimelineRow span(
      double seconds, double untilSeconds, String lane, String label, Kind kind) {
    return new TimelineRow(seconds, untilSeconds, lane, label, "", kind);
  }

  /** The same row with its reason. */
  public TimelineRow because(String reason) {
    return new TimelineRow(seconds, untilSeconds, lane, label, reason, kind);
  }

  /** Whether it lasts. */
  public boolean isSpan() {
    return untilSeconds > seconds;
  }
}
