package keenward.core.rehearsal.scenario;

import java.util.List;
import keenward.core.rehearsal.Input;

/**
 * What happens to a system, and what is expected of it. Times are in tenths of a second since the
 * start of the script.
 *
 * @param startTenths when the script starts, in tenths of a second since midnight
 * @param events what happens, in order of time, and of the script where times are equal
 * @param expectations what is expected
 * @param endTenths the last moment that the script speaks of
 */
public record Script(
    int startTenths, List<Event> events, List<Expectation> expectations, int endTenths) {

  public Script {
    events = List.copyOf(events);
    expectations = List.copyOf(expectations);
  }

  /**
   * Something that happens.
   *
   * @param atTenths when
   * @param line line of the script
   * @param input what
   */
  public record Event(int atTenths, int line, Input input) {}
}
