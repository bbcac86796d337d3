package keenward.files.shape;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import keenward.files.QuotedText;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/**
 * A text. What looks like a number is text too, as written: leading zeros stay.
 *
 * @param most characters (code points) at most; 16 or more, so that no number of JSON is too long
 *     for it
 * @param severalLines whether it may have line ends
 */
record TextShape(int most, boolean severalLines) implements Shape<String> {

  /** Something to see: the schema uses the same expression. */
  static final String VISIBLE = "\\S";

  private static final Pattern SOMETHING_VISIBLE = Pattern.compile(VISIBLE);

  TextShape {
    if (most < 16) {
      throw new IllegalArgumentException("a text may have 16 characters at least, not " + most);
    }
  }

  @Override
  public Optional<String> read(YamlNode node, ReadContext context) {
    if (!(node instanceof YamlScalar scalar) || scalar.isEmpty()) {
      return Mismatch.report(node, this, context);
    }
    String text = scalar.text();
    int length = text.codePointCount(0, text.length());
    if (length > most) {
      context.structure(
          node.span(), "too long: " + QuotedText.of(text), expectation(), "shorten it");
      return Optional.empty();
    }
    if (!severalLines && text.indexOf('\n') >= 0) {
      context.structure(node.span(), "a text of several lines", expectation(), "join the lines");
      return Optional.empty();
    }
    if (!SOMETHING_VISIBLE.matcher(text).find()) {
      context.structure(node.span(), "a text of blanks only", expectation(), "");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  @Override
  public String expectation() {
    return "a text of up to " + most + " characters";
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.SCALAR);
  }
}
