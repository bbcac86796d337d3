package keenward.files.shape;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/** A text of a stated form that is never a plain number, such as a date. */
final class PatternShape<T> implements Shape<T> {

  private final String expectation;
  private final String expression;
  private final Optional<String> format;
  private final Function<String, Optional<T>> value;
  private final Pattern form;

  /**
   * @param expectation words to follow "expected"
   * @param expression regular expression from ^ to $, of what Java and ECMA have in common
   * @param format format of JSON Schema that holds too
   * @param value the value of a text of that form; empty when there is no such value
   */
  PatternShape(
      String expectation,
      String expression,
      Optional<String> format,
      Function<String, Optional<T>> value) {
    this.expectation = expectation;
    this.expression = expression;
    this.format = format;
    this.value = value;
    this.form = Pattern.compile(expression);
  }

  String expression() {
    return expression;
  }

  Optional<String> format() {
    return format;
  }

  @Override
  public Optional<T> read(YamlNode node, ReadContext context) {
    if (node instanceof YamlScalar scalar
        && !scalar.isEmpty()
        && PlainNumber.of(scalar).isEmpty()
        && form.matcher(scalar.text()).matches()) {
      Optional<T> found = value.apply(scalar.text());
      if (found.isPresent()) {
        return found;
      }
    }
    return Mismatch.report(node, this, context);
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
