package keenward.core.rehearsal.scenario;

import java.util.Optional;
import java.util.function.Predicate;
import keenward.core.rehearsal.Notice;
import keenward.core.rehearsal.Output;
import keenward.core.rehearsal.Tone;

/**
 * A timeline in a nutshell.
 *
 * @param alarm the first alarm that the system raised, shown or kept to itself
 * @param heard the first moment that the sounders gave a tone
 * @param reported the first alarm signal that left for the centre
 * @param calledOff the first sign that an alarm was stopped or cancelled by a code
 * @param refused the first order that was not carried out
 */
public record Highlights(
    Optional<Row> alarm,
    Optional<Row> heard,
    Optional<Row> reported,
    Optional<Row> calledOff,
    Optional<Row> refused) {

  /** DC-05 codes below this are alarms. */
  private static final int ALARM_CODES_END = 200;

  private static final int NEW = 1;

  /** The nutshell of a timeline. */
  public static Highlights of(Timeline timeline) {
    return new Highlights(
        first(timeline, Highlights::isAlarm),
        first(
            timeline, output -> output instanceof Output.Sounder(Tone tone) && tone != Tone.SILENT),
        first(timeline, Highlights::isAlarmSignal),
        first(timeline, Highlights::isCalledOff),
        first(timeline, output -> output instanceof Output.Refused));
  }

  private static Optional<Row> first(Timeline timeline, Predicate<Output> wanted) {
    for (Row row : timeline.rows()) {
      if (row.output().isPresent() && wanted.test(row.output().get())) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }

  private static boolean isAlarm(Output output) {
    return switch (output) {
      case Output.Display(int ignored, Notice notice, int alsoIgnored, int tenths) ->
          notice == Notice.ALARM;
      case Output.Log(Notice notice, int ignored, int alsoIgnored) -> notice == Notice.ALARM;
      case Output.Signal signal -> isAlarmSignal(signal);
      default -> false;
    };
  }

  private static boolean isAlarmSignal(Output output) {
    return output instanceof Output.Signal signal
        && signal.qualifier() == NEW
        && signal.code() < ALARM_CODES_END;
  }

  private static boolean isCalledOff(Output output) {
    return output instanceof Output.Display(int ignored, Notice notice, int a, int b)
        && (notice == Notice.ALARM_STOPPED || notice == Notice.CANCEL_SENT);
  }

  /** In one line; "no alarm" when none was raised and nothing was refused. */
  public String text() {
    StringBuilder text = new StringBuilder();
    add(text, "alarm", alarm);
    add(text, "heard", heard);
    add(text, "reported", reported);
    add(text, "called off", calledOff);
    add(text, "refused", refused);
    return text.isEmpty() ? "no alarm" : text.toString();
  }

  private static void add(StringBuilder text, String what, Optional<Row> row) {
    row.ifPresent(each ->
        text.append(text.isEmpty() ? "" : ", ").append(what).append(' ').append(each.clock()));
  }
}
