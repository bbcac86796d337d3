package keenward.core.rehearsal.scenario;

import java.util.Optional;
import keenward.core.rehearsal.Input;
import keenward.core.rehearsal.Output;

/**
 * One line of a timeline.
 *
 * @param atTenths when, in tenths of a second since midnight of the first day
 * @param kind where it is noticed
 * @param what in plain words
 * @param input what happened to the system; empty unless it is an input
 * @param output what the system did; empty when it is an input
 * @param because why; empty when it is an input
 * @param reason why, as a sentence; empty text when it is an input
 */
public record Row(
    int atTenths,
    RowKind kind,
    String what,
    Optional<Input> input,
    Optional<Output> output,
    Optional<Because> because,
    String reason) {

  /** The time on the clock. */
  public String clock() {
    return TimeText.clock(atTenths);
  }
}
