package keenward.papers;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a template can see: names with texts, yes or no, lists and further views. Nothing else, and
 * no method to call.
 */
final class View extends AbstractMap<String, Object> {

  private final Map<String, Object> values = new LinkedHashMap<>();

  View text(String name, String value) {
    values.put(name, value);
    return this;
  }

  View number(String name, int value) {
    return text(name, Integer.toString(value));
  }

  View flag(String name, boolean value) {
    values.put(name, value);
    return this;
  }

  View texts(String name, List<String> list) {
    values.put(name, List.copyOf(list));
    return flag("has-" + name, !list.isEmpty());
  }

  View views(String name, List<View> list) {
    values.put(name, List.copyOf(list));
    return flag("has-" + name, !list.isEmpty());
  }

  View view(String name, View value) {
    values.put(name, value);
    return this;
  }

  @Override
  public Set<Map.Entry<String, Object>> entrySet() {
    return Collections.unmodifiableSet(values.entrySet());
  }
}
