package keenward.core.dialogue.description;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Unmodifiable copies of maps that keep their order, which a description's reader chose. */
final class Ordered {
  private Ordered() {}

  static <K, V> Map<K, V> copyOf(Map<K, V> source) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(source));
  }
}
