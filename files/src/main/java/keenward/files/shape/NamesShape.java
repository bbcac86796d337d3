package keenward.files.shape;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.files.QuotedText;
import keenward.files.yaml.YamlEntry;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;

/**
 * A map whose names the file chooses, each with a value of one shape. The order of the file is
 * kept.
 */
public record NamesShape<K, V>(NameKey<K> key, Shape<V> value) implements Shape<Map<K, V>> {

  @Override
  public Optional<Map<K, V>> read(YamlNode node, ReadContext context) {
    if (!(node instanceof YamlMap map)) {
      return Mismatch.report(node, this, context);
    }
    Map<K, V> values = new LinkedHashMap<>();
    for (YamlEntry entry : map.entries()) {
      Optional<K> name = key.read(entry.name());
      if (name.isEmpty()) {
        context.structure(
            entry.key().span(),
            QuotedText.of(entry.name()) + " as " + key.label(),
            key.expectation(),
            "rename it");
      }
      Optional<V> read = value.read(entry.value(), context);
      if (name.isPresent() && read.isPresent()) {
        values.put(name.get(), read.get());
      }
    }
    return Optional.of(values);
  }

  @Override
  public String expectation() {
    return "a map from " + key.label() + " to " + value.expectation();
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.MAP);
  }
}
