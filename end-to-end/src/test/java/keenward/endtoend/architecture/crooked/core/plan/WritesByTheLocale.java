package keenward.endtoend.architecture.crooked.core.plan;

/** Breaks the purity of core. */
public final class WritesByTheLocale {

  private WritesByTheLocale() {}

  static String write(double value) {
    return String.format("%.1f", value);
  }
}
