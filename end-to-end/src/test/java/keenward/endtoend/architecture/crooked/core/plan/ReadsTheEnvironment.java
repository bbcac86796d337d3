package keenward.endtoend.architecture.crooked.core.plan;

import org.jspecify.annotations.Nullable;

/** Breaks the purity of core. */
public final class ReadsTheEnvironment {

  private ReadsTheEnvironment() {}

  static @Nullable String home() {
    return System.getenv("HOME");
  }
}
