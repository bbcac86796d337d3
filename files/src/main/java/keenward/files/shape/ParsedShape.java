package keenward.files.shape;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import keenward.core.quantities.Parsed;
import keenward.files.yaml.YamlNode;

/** A shape whose value is parsed further; what does not parse is a fault of meaning. */
record ParsedShape<T, R>(Shape<T> inner, Function<T, Parsed<R>> parse) implements Shape<R> {

  @Override
  public Optional<R> read(YamlNode node, ReadContext context) {
    Optional<Parsed<R>> parsed = inner.read(node, context).map(parse);
    if (parsed.isPresent()) {
      String expected = parsed.get().expected();
      if (expected != null) {
        context.meaning(node.span(), Mismatch.describe(node), expected, "");
      }
    }
    return parsed.flatMap(Parsed::find);
  }

  @Override
  public String expectation() {
    return inner.expectation();
  }

  @Override
  public Set<NodeKind> kinds() {
    return inner.kinds();
  }
}
