package keenward.files.shape;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import keenward.core.quantities.Parsed;
import keenward.files.QuotedText;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/** A number with a unit; {@code core.quantities} reads it. */
final class QuantityShape<T> implements Shape<T> {

  private final Function<String, Parsed<T>> parse;
  private final List<String> units;
  private final String expression;
  private final Pattern form;
  private final String expectation;

  QuantityShape(Function<String, Parsed<T>> parse, List<String> units) {
    this.parse = parse;
    this.units = List.copyOf(units);
    this.expression =
        "^ *-?[0-9]+(\\.[0-9]+)? *("
            + units.stream().map(QuantityShape::escaped).collect(Collectors.joining("|"))
            + ") *$";
    this.form = Pattern.compile(expression);
    String expected = parse.apply("").expected();
    if (expected == null) {
      throw new IllegalArgumentException("the empty text is no quantity");
    }
    this.expectation = expected;
  }

  private static String escaped(String unit) {
    return unit.replaceAll("[^A-Za-z0-9\u0080-\uFFFF]", "\\\\$0");
  }

  /** The units it may have, as written. */
  List<String> units() {
    return units;
  }

  /** The regular expression of number and unit, for the schema. */
  String expression() {
    return expression;
  }

  @Override
  public Optional<T> read(YamlNode node, ReadContext context) {
    if (!(node instanceof YamlScalar scalar) || !form.matcher(scalar.text()).matches()) {
      return Mismatch.report(node, this, remedy(node), context);
    }
    Parsed<T> parsed = parse.apply(scalar.text());
    String expected = parsed.expected();
    if (expected != null) {
      context.meaning(node.span(), QuotedText.of(scalar.text()), expected, "");
    }
    return parsed.find();
  }

  private String remedy(YamlNode node) {
    if (node instanceof YamlScalar scalar
        && scalar.text().length() <= 40
        && scalar.text().matches("-?[0-9]+(\\.[0-9]+)?")) {
      return "add the unit: " + String.join(", ", units);
    }
    if (node instanceof YamlScalar scalar
        && scalar.text().matches("-?[0-9]{1,9},[0-9]{1,9} ?\\S{0,9}")) {
      return "write a decimal point";
    }
    return "";
  }

  @Override
  public String expectation() {
    return expectation;
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.SCALAR);
  }
}
