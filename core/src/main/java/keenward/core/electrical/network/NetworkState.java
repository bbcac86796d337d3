package keenward.core.electrical.network;

/** What a network settles to, or that it cannot carry its loads. */
public sealed interface NetworkState {

  /**
   * The network carries its loads.
   *
   * @param volts voltage of each node; the supply is node 0
   * @param rounds how often the equations were solved; 1 where no load is of constant power
   */
  record Steady(double[] volts, int rounds) implements NetworkState {}

  /**
   * There is no voltage above 0 V at every node at which the loads get what they draw: the supply
   * goes into its current limit, or devices drop out.
   */
  record Collapsed() implements NetworkState {}
}
