package keenward.endtoend.architecture.crooked.core.plan;

import java.net.URI;

/** Breaks the purity of core. */
public final class OpensASocket {

  private OpensASocket() {}

  static URI open(String name) {
    return URI.create(name);
  }
}
