package keenward.files.shape;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/** A whole number within a range, both ends included. */
record WholeNumberShape(int least, int most) implements Shape<Integer> {

  @Override
  public Optional<Integer> read(YamlNode node, ReadContext context) {
    Optional<BigDecimal> number =
        node instanceof YamlScalar scalar ? PlainNumber.of(scalar) : Optional.empty();
    if (number.isEmpty()) {
      return Mismatch.report(node, this, PlainNumber.remedy(node), context);
    }
    BigDecimal value = number.get();
    if (value.stripTrailingZeros().scale() > 0
        || value.compareTo(BigDecimal.valueOf(least)) < 0
        || value.compareTo(BigDecimal.valueOf(most)) > 0) {
      return Mismatch.report(node, this, context);
    }
    return Optional.of(value.intValueExact());
  }

  @Override
  public String expectation() {
    return least == most ? "the number " + least : "a whole number from " + least + " to " + most;
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.SCALAR);
  }
}
