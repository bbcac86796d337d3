package keenward.files.shape;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/** A number within a range, both ends included. */
record DecimalShape(BigDecimal least, BigDecimal most) implements Shape<BigDecimal> {

  @Override
  public Optional<BigDecimal> read(YamlNode node, ReadContext context) {
    Optional<BigDecimal> number =
        node instanceof YamlScalar scalar ? PlainNumber.of(scalar) : Optional.empty();
    if (number.isEmpty() || number.get().compareTo(least) < 0 || number.get().compareTo(most) > 0) {
      return Mismatch.report(node, this, number.isEmpty() ? PlainNumber.remedy(node) : "", context);
    }
    return number;
  }

  @Override
  public String expectation() {
    return "a number from " + least.toPlainString() + " to " + most.toPlainString();
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.SCALAR);
  }
}
