package keenward.files.shape;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlRefused;

/**
 * One of several shapes: told apart by the kind of node, and among single values by which one fits
 * first.
 */
record EitherShape<T>(List<Shape<? extends T>> shapes) implements Shape<T> {

  EitherShape {
    shapes = List.copyOf(shapes);
  }

  @Override
  public Optional<T> read(YamlNode node, ReadContext context) {
    if (node instanceof YamlRefused) {
      return Optional.empty();
    }
    List<Shape<? extends T>> candidates =
        shapes.stream().filter(shape -> shape.kinds().contains(NodeKind.of(node))).toList();
    if (candidates.size() == 1) {
      return widened(candidates.getFirst().read(node, context));
    }
    for (Shape<? extends T> shape : candidates) {
      ReadContext trial = context.trial();
      Optional<? extends T> value = shape.read(node, trial);
      if (trial.isStructureFine()) {
        context.adopt(trial);
        return widened(value);
      }
    }
    return Mismatch.report(node, this, context);
  }

  private static <T> Optional<T> widened(Optional<? extends T> value) {
    return value.map(each -> each);
  }

  @Override
  public String expectation() {
    return shapes.stream().map(Shape::expectation).collect(Collectors.joining(", or "));
  }

  @Override
  public Set<NodeKind> kinds() {
    Set<NodeKind> kinds = EnumSet.noneOf(NodeKind.class);
    shapes.forEach(shape -> kinds.addAll(shape.kinds()));
    return kinds;
  }
}
