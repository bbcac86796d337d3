package keenward.endtoend.architecture.crooked.core.plan;

import java.util.Random;

/** Breaks the purity of core. */
public final class RollsDice {

  private RollsDice() {}

  static int roll(Random random) {
    return random.nextInt(6);
  }
}
