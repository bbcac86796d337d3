package keenward.core.electrical.network;

/**
 * A resistance between two nodes of a network: a cable, there and back.
 *
 * @param one number of the node at one end
 * @param other number of the node at the other end
 * @param ohms its resistance, more than 0
 */
public record Segment(int one, int other, double ohms) {

  /** Refuses what is no resistance between two nodes. */
  public Segment {
    if (one == other || !(ohms > 0) || ohms == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          "expected two different nodes and a finite resistance above 0 ohm");
    }
  }
}
