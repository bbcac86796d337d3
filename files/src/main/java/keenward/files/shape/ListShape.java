package keenward.files.shape;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.files.yaml.YamlList;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/**
 * Values of one shape in order.
 *
 * @param least how many at least
 * @param most how many at most
 * @param distinct whether the same single value may stand only once
 */
public record ListShape<T>(Shape<T> item, int least, int most, boolean distinct)
    implements Shape<List<T>> {

  /** The same list with a stated number of items. */
  public ListShape<T> of(int fewest, int many) {
    return new ListShape<>(item, fewest, many, distinct);
  }

  /** The same list, in which the same single value may stand only once. */
  public ListShape<T> withoutRepetition() {
    return new ListShape<>(item, least, most, true);
  }

  @Override
  public Optional<List<T>> read(YamlNode node, ReadContext context) {
    if (!(node instanceof YamlList list)) {
      return Mismatch.report(node, this, bracketsRemedy(node), context);
    }
    int size = list.items().size();
    if (size < least || size > most) {
      context.structure(
          node.span(), "a list of " + size + (size == 1 ? " item" : " items"), expectation(), "");
    }
    List<T> values = new ArrayList<>(size);
    Set<String> seen = new HashSet<>();
    for (YamlNode item : list.items()) {
      if (distinct && item instanceof YamlScalar scalar && !seen.add(identity(scalar))) {
        context.structure(
            item.span(),
            Mismatch.describe(item) + " for the second time",
            "each once",
            "remove it");
      }
      item().read(item, context).ifPresent(values::add);
    }
    return Optional.of(values);
  }

  /** Equal for what JSON takes as equal. */
  private static String identity(YamlScalar scalar) {
    return PlainNumber.of(scalar)
        .map(number -> "number " + number.stripTrailingZeros().toPlainString())
        .orElse("text " + scalar.text());
  }

  private String bracketsRemedy(YamlNode node) {
    return node instanceof YamlScalar && item.kinds().contains(NodeKind.SCALAR)
        ? "put it in brackets: [ ]"
        : "";
  }

  @Override
  public String expectation() {
    String count =
        least == most
            ? "of exactly " + least + ": "
            : most == Integer.MAX_VALUE
                ? least > 0 ? "of at least " + least + ": " : "of "
                : "of " + least + " to " + most + ": ";
    return "a list " + count + item.expectation();
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.LIST);
  }
}
