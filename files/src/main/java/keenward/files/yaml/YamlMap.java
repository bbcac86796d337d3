package keenward.files.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Names with values, in the order of the file; no name occurs twice. */
public final class YamlMap implements YamlNode {

  private final List<YamlEntry> entries;
  private final Map<String, YamlEntry> byName;
  private final boolean flow;
  private final Span span;

  /**
   * A map of its entries.
   *
   * @param flow whether it is written in braces
   * @throws IllegalArgumentException when a name occurs twice
   */
  public YamlMap(List<YamlEntry> entries, boolean flow, Span span) {
    this.entries = List.copyOf(entries);
    this.flow = flow;
    this.span = span;
    Map<String, YamlEntry> names = LinkedHashMap.newLinkedHashMap(entries.size());
    for (YamlEntry entry : entries) {
      if (names.put(entry.name(), entry) != null) {
        throw new IllegalArgumentException("name given twice: " + entry.name());
      }
    }
    this.byName = names;
  }

  /** The entries in the order of the file. */
  public List<YamlEntry> entries() {
    return entries;
  }

  /** Whether it is written in braces, {@code { a: b }}. */
  public boolean isFlow() {
    return flow;
  }

  @Override
  public Span span() {
    return span;
  }

  /** The entry of that name. */
  public Optional<YamlEntry> entry(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** The value of that name. */
  public Optional<YamlNode> find(String name) {
    return entry(name).map(YamlEntry::value);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof YamlMap map
        && entries.equals(map.entries)
        && flow == map.flow
        && span.equals(map.span);
  }

  @Override
  public int hashCode() {
    return Objects.hash(entries, flow, span);
  }

  @Override
  public String toString() {
    return "YamlMap" + entries;
  }
}
