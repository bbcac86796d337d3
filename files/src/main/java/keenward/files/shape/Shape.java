package keenward.files.shape;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import keenward.core.plan.Fact;
import keenward.core.quantities.Parsed;
import keenward.files.yaml.YamlNode;

/**
 * What a node has to be, and the value it then stands for.
 *
 * @param <T> the value
 */
public sealed interface Shape<T>
    permits ConvertedShape,
        DecimalShape,
        EitherShape,
        LaterShape,
        ListShape,
        MapShape,
        NamesShape,
        ParsedShape,
        PatternShape,
        QuantityShape,
        ReferenceShape,
        TextShape,
        UnknownOrShape,
        WholeNumberShape,
        WordShape {

  /**
   * The value of a node as far as it can be read; every fault is added to the context. Empty only
   * when a fault was reported, now or when the text was parsed.
   */
  Optional<T> read(YamlNode node, ReadContext context);

  /** What is right, worded to follow "expected". */
  String expectation();

  /** The kinds of node that may be right. */
  Set<NodeKind> kinds();

  /** The same shape with its value turned into something else. The function is total. */
  default <R> Shape<R> as(Function<T, R> function) {
    return new ConvertedShape<>(this, value -> true, function);
  }

  /** The same shape with its value parsed further; a refusal is reported at the node. */
  default <R> Shape<R> parsedBy(Function<T, Parsed<R>> parse) {
    return new ParsedShape<>(this, parse);
  }

  /** The same shape, or the word {@code unknown}. */
  default Shape<Fact<T>> orUnknown() {
    return new UnknownOrShape<>(this);
  }
}
