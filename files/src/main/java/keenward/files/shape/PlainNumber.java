package keenward.files.shape;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/**
 * Numbers without unit: an optional minus, digits without leading zeros, an optional decimal point
 * with digits; no exponent, no quotes. Every one of them is a number of JSON and of YAML 1.2 too,
 * with the same value.
 */
public final class PlainNumber {

  private static final int LONGEST = 15;
  private static final Pattern FORM = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?");

  private PlainNumber() {}

  /** The number that an unquoted value is; empty when it is none. */
  public static Optional<BigDecimal> of(YamlScalar scalar) {
    return scalar.isPlain()
            && scalar.text().length() <= LONGEST
            && FORM.matcher(scalar.text()).matches()
        ? Optional.of(new BigDecimal(scalar.text()))
        : Optional.empty();
  }

  static String remedy(YamlNode node) {
    if (!(node instanceof YamlScalar scalar)) {
      return "";
    }
    if (!scalar.isPlain() && FORM.matcher(scalar.text()).matches()) {
      return "write it without quotes";
    }
    return scalar.text().matches("-?0[0-9]+(\\.[0-9]+)?") ? "write it without leading zeros" : "";
  }
}
