package keenward.core.electrical.network;

/** What a network settles to, or that it cannot carry its loads. */
public sealed interface NetworkState {

  /** The network carries its loads. */
  final class Steady implements NetworkState {
    private final double[] volts;
    private final int rounds;

    Steady(double[] volts, int rounds) {
      this.volts = volts;
      this.rounds = rounds;
    }

    /** Voltage of a node; the supply is node 0. */
    public double volts(int node) {
      return volts[node];
    }

    /** How often the equations were solved; once where no load is of constant power. */
    public int rounds() {
      return rounds;
    }
  }

  /**
   * There is no voltage above 0 V at every node at which the loads get what they draw: the supply
   * goes into its current limit, or devices drop out.
   */
  record Collapsed() implements NetworkState {}
}
