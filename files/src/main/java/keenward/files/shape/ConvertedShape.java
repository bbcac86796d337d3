package keenward.files.shape;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import keenward.files.yaml.YamlNode;

/**
 * A shape whose value is turned into something else.
 *
 * @param whole whether a value is complete enough to be turned; when not, the fault is reported
 *     already
 */
record ConvertedShape<T, R>(Shape<T> inner, Predicate<T> whole, Function<T, R> function)
    implements Shape<R> {

  @Override
  public Optional<R> read(YamlNode node, ReadContext context) {
    return inner.read(node, context).filter(whole).map(function);
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
