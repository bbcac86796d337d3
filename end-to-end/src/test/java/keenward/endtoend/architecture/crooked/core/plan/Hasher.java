package keenward.endtoend.architecture.crooked.core.plan;

import java.util.HexFormat;

/** Fine on a server, and lacking in a browser. */
public record Hasher(int number) {

  String words() {
    return HexFormat.of().toHexDigits(number);
  }
}
