package keenward.core.electrical.network;

/**
 * What hangs on the nodes of a network. A load draws its current whatever the voltage, or the
 * current that makes up its power, or a current in proportion to the voltage; one node may have all
 * three.
 */
public final class NodeLoads {
  final double[] amperes;
  final double[] watts;
  final double[] siemens;

  /** No load at any of so many nodes. */
  public NodeLoads(int nodes) {
    amperes = new double[nodes];
    watts = new double[nodes];
    siemens = new double[nodes];
  }

  /** Adds a load of constant current, at least 0 A. */
  public NodeLoads current(int node, double addedAmperes) {
    amperes[node] += positive(addedAmperes);
    return this;
  }

  /** Adds a load of constant power, at least 0 W. */
  public NodeLoads power(int node, double addedWatts) {
    watts[node] += positive(addedWatts);
    return this;
  }

  /** Adds a load of constant resistance by its conductance, at least 0 S. */
  public NodeLoads conductance(int node, double addedSiemens) {
    siemens[node] += positive(addedSiemens);
    return this;
  }

  /** Current into the loads of a node at a voltage above 0 V, in amperes. */
  public double amperesAt(int node, double volts) {
    return amperes[node] + watts[node] / volts + siemens[node] * volts;
  }

  private static double positive(double load) {
    if (!(load >= 0) || load == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("expected a finite load of at least 0");
    }
    return load;
  }
}
