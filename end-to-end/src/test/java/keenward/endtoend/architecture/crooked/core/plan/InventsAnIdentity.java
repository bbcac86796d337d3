package keenward.endtoend.architecture.crooked.core.plan;

import java.util.UUID;

/** Breaks the purity of core. */
public final class InventsAnIdentity {

  private InventsAnIdentity() {}

  static UUID invent() {
    return UUID.randomUUID();
  }
}
