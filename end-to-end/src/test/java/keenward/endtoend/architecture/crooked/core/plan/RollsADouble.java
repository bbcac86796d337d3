package keenward.endtoend.architecture.crooked.core.plan;

/** Breaks the purity of core. */
public final class RollsADouble {

  private RollsADouble() {}

  static double roll() {
    return Math.random();
  }
}
