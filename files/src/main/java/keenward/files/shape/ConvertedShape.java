package keenward.files.shape;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import keenward.files.yaml.YamlNode;

/** A shape whose value is turned into something else. */
record ConvertedShape<T, R>(Shape<T> inner, Function<T, R> function) implements Shape<R> {

  @Override
  public Optional<R> read(YamlNode node, ReadContext context) {
    return inner.read(node, context).map(function);
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
