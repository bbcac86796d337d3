package keenward.files.shape;

import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import keenward.files.yaml.YamlNode;

/**
 * A shape that is not built yet, so that shapes may hold themselves. It has to be a {@link
 * MapShape}.
 */
record LaterShape(Supplier<MapShape> shape) implements Shape<Fields> {

  @Override
  public Optional<Fields> read(YamlNode node, ReadContext context) {
    return shape.get().read(node, context);
  }

  @Override
  public String expectation() {
    return shape.get().expectation();
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.MAP);
  }
}
