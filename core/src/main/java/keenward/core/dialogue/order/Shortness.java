package keenward.core.dialogue.order;

/**
 * How near to the shortest an order is. Counted in acts: keys, and waits, transmissions and power
 * switched, one each.
 *
 * @param acts acts of this order, in the longest case
 * @param atLeast no order for the same work can do with fewer
 * @param exact whether this one is proved to be the shortest
 */
public record Shortness(int acts, int atLeast, boolean exact) {
  public Shortness {
    if (atLeast > acts) {
      throw new IllegalArgumentException(acts + " acts, yet at least " + atLeast);
    }
  }

  /** By how many acts it may be longer than need be. */
  public int gap() {
    return exact ? 0 : acts - atLeast;
  }
}
