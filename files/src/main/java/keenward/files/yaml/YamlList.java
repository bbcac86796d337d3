package keenward.files.yaml;

import java.util.List;

/**
 * Values in order.
 *
 * @param flow whether it is written in brackets, {@code [a, b]}
 */
public record YamlList(List<YamlNode> items, boolean flow, Span span) implements YamlNode {
  public YamlList {
    items = List.copyOf(items);
  }
}
