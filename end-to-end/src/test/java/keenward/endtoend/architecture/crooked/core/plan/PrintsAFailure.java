package keenward.endtoend.architecture.crooked.core.plan;

/** Breaks the purity of core. */
public final class PrintsAFailure {

  private PrintsAFailure() {}

  static void print(IllegalStateException failure) {
    failure.printStackTrace();
  }
}
