package keenward.endtoend.architecture.crooked.core.plan;

/** Breaks the purity of core. */
public final class StartsAThread {

  private StartsAThread() {}

  static void start(Runnable work) {
    Thread.ofVirtual().start(work);
  }
}
