package keenward.endtoend.architecture.crooked.core.plan;

/** Breaks the purity of core. */
public final class AsksTheMillisecond {

  private AsksTheMillisecond() {}

  static long now() {
    return System.currentTimeMillis();
  }
}
