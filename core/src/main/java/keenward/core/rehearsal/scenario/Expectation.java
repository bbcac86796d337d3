package keenward.core.rehearsal.scenario;

import java.util.Optional;
import keenward.core.plan.ArmingMode;
import keenward.core.rehearsal.Tone;

/**
 * Something that a script expects of the system. Times are in tenths of a second since the start of
 * the script.
 */
public sealed interface Expectation {

  /** Line of the script. */
  int line();

  /** The moment it speaks of; the start when it speaks of all of them. */
  default int atTenths() {
    return 0;
  }

  /**
   * A signal leaves at a moment.
   *
   * @param line line of the script
   * @param atTenths when
   * @param signal which
   */
  record Signalled(int line, int atTenths, SignalPattern signal) implements Expectation {}

  /**
   * No such signal leaves at all.
   *
   * @param line line of the script
   * @param signal which; empty means none whatever
   */
  record NotSignalled(int line, Optional<SignalPattern> signal) implements Expectation {}

  /**
   * No signal leaves that is not expected by another line.
   *
   * @param line line of the script
   */
  record NoOtherSignal(int line) implements Expectation {}

  /**
   * The sounders give a tone at a moment, whenever it started.
   *
   * @param line line of the script
   * @param atTenths when
   * @param tone which
   */
  record Sounds(int line, int atTenths, Tone tone) implements Expectation {}

  /**
   * The strobe is on or off at a moment.
   *
   * @param line line of the script
   * @param atTenths when
   * @param on whether it flashes
   */
  record Flashes(int line, int atTenths, boolean on) implements Expectation {}

  /**
   * A partition is armed or disarmed at a moment.
   *
   * @param line line of the script
   * @param atTenths when
   * @param partition index of the partition
   * @param mode how it is armed; empty for disarmed
   */
  record InMode(int line, int atTenths, int partition, Optional<ArmingMode> mode)
      implements Expectation {}

  /**
   * A row of the timeline holds a text at a moment.
   *
   * @param line line of the script
   * @param atTenths when
   * @param text the text
   */
  record Shown(int line, int atTenths, String text) implements Expectation {}

  /**
   * No row of the timeline holds a text.
   *
   * @param line line of the script
   * @param text the text
   */
  record NeverShown(int line, String text) implements Expectation {}
}
