package keenward.files.shape;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import keenward.core.plan.Fact;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/**
 * A value, or the word {@code unknown} for one that is not known yet. Where any text may stand, the
 * word in quotes is that text.
 */
record UnknownOrShape<T>(Shape<T> known) implements Shape<Fact<T>> {

  static final String WORD = "unknown";

  @Override
  public Optional<Fact<T>> read(YamlNode node, ReadContext context) {
    if (node instanceof YamlScalar scalar
        && scalar.text().equals(WORD)
        && (scalar.isPlain() || !(known instanceof TextShape))) {
      return Optional.of(Fact.unknown());
    }
    return known.read(node, context).map(Fact::of);
  }

  @Override
  public String expectation() {
    return known.expectation() + ", or " + WORD;
  }

  @Override
  public Set<NodeKind> kinds() {
    Set<NodeKind> kinds = EnumSet.of(NodeKind.SCALAR);
    kinds.addAll(known.kinds());
    return kinds;
  }
}
