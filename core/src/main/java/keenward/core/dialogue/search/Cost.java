package keenward.core.dialogue.search;

/**
 * Costs as one number: acts first (keys, and waits, transmissions and power switched, one each),
 * then tenths of a second, then how often something is stored, so that of two ways that are equally
 * long the one that stores less is taken.
 */
final class Cost {
  private static final int ACT_SHIFT = 44;
  private static final int TENTH_SHIFT = 20;

  /** More than any order costs. */
  static final long NEVER = 1L << 60;

  private Cost() {}

  static long of(int acts, int tenths) {
    return ((long) acts << ACT_SHIFT) + ((long) tenths << TENTH_SHIFT);
  }

  /** The cost of acts that store something so many times. */
  static long of(int acts, int tenths, int stores) {
    return of(acts, tenths) + stores;
  }

  static int tenths(long cost) {
    return (int) ((cost >> TENTH_SHIFT) & ((1L << (ACT_SHIFT - TENTH_SHIFT)) - 1));
  }

  static int acts(long cost) {
    return (int) (cost >> ACT_SHIFT);
  }

  /** The sum, where {@link #NEVER} stays what it is. */
  static long sum(long first, long second) {
    return Math.min(NEVER, first + second);
  }
}
