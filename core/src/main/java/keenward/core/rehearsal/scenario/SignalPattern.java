package keenward.core.rehearsal.scenario;

import keenward.core.rehearsal.Output;
import keenward.core.rehearsal.SystemModel;

/**
 * Signals of one kind.
 *
 * @param qualifier DC-05 qualifier
 * @param code DC-05 event code
 * @param zone index of the zone; none for any
 * @param user index of the user; none for any
 * @param partition index of the partition; none for any
 */
public record SignalPattern(int qualifier, int code, int zone, int user, int partition) {

  /** Whether a signal is one of them. */
  boolean fits(Output.Signal signal) {
    return signal.qualifier() == qualifier
        && signal.code() == code
        && fits(zone, signal.zone())
        && fits(user, signal.user())
        && fits(partition, signal.partition());
  }

  private static boolean fits(int wanted, int index) {
    return wanted == SystemModel.NONE || wanted == index;
  }
}
