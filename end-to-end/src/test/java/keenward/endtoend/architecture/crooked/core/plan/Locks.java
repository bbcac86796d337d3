package keenward.endtoend.architecture.crooked.core.plan;

import java.util.concurrent.locks.ReentrantLock;

/** Breaks the purity of core. */
public final class Locks {

  private Locks() {}

  static ReentrantLock lock() {
    return new ReentrantLock();
  }
}
