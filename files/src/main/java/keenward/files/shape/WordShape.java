package keenward.files.shape;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/**
 * One word of a published list.
 *
 * @param words each word with what it stands for, in the order shown
 */
record WordShape<T>(Map<String, T> words) implements Shape<T> {

  WordShape {
    words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }

  @Override
  public Optional<T> read(YamlNode node, ReadContext context) {
    if (node instanceof YamlScalar scalar) {
      T value = words.get(scalar.text());
      if (value != null) {
        return Optional.of(value);
      }
      return Mismatch.report(
          node, this, NearestWord.question(scalar.text(), words.keySet()), context);
    }
    return Mismatch.report(node, this, context);
  }

  @Override
  public String expectation() {
    return words.size() == 1
        ? "the word " + String.join(", ", words.keySet())
        : words.size() == 2
            ? String.join(" or ", words.keySet())
            : "one of " + String.join(", ", words.keySet());
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.SCALAR);
  }
}
