package keenward.endtoend.architecture.crooked.core.plan;

import java.time.LocalDate;
import java.time.ZoneOffset;

/** Breaks the purity of core. */
public final class AsksTheClock {

  private AsksTheClock() {}

  static LocalDate today() {
    return LocalDate.now(ZoneOffset.UTC);
  }
}
