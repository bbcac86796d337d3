package keenward.core.electrical.loop;

/**
 * What may be read, in ohms.
 *
 * @param leastOhms at the worst corner below
 * @param nominalOhms as planned; infinite for an open loop
 * @param mostOhms at the worst corner above
 */
public record Band(double leastOhms, double nominalOhms, double mostOhms) {

  /** Whether a value lies in it, when the meter may be wrong by a share of its reading. */
  public boolean holds(double ohms, double meterShare) {
    return ohms >= leastOhms * (1 - meterShare) && ohms <= mostOhms * (1 + meterShare);
  }

  /** Its corners in words. */
  public String corners() {
    return mostOhms == Double.POSITIVE_INFINITY
        ? "from " + FaultFinder.ohms(leastOhms)
        : shortened(FaultFinder.ohms(leastOhms), FaultFinder.ohms(mostOhms));
  }

  /** A unit that both share is said once. */
  private static String shortened(String least, String most) {
    String unit = most.substring(most.indexOf(' '));
    return (least.endsWith(unit) ? least.substring(0, least.length() - unit.length()) : least)
        + " to "
        + most;
  }
}
