package keenward.files.yaml;

/**
 * A single value: its text after quotes, escapes and folding are undone. What the text means is
 * decided by whoever expects it there; only a plain text may be a number or a word.
 */
public record YamlScalar(String text, Style style, Span span) implements YamlNode {

  /** How the value is written. */
  public enum Style {
    PLAIN,
    SINGLE_QUOTED,
    DOUBLE_QUOTED,
    /** After {@code |}. */
    LITERAL,
    /** After {@code >}. */
    FOLDED
  }

  /** Whether it is written without quotes on one or more lines. */
  public boolean isPlain() {
    return style == Style.PLAIN;
  }

  /** Whether nothing is given: no text, {@code ~} or {@code null}, unquoted. */
  public boolean isEmpty() {
    return isPlain() && (text.isEmpty() || text.equals("~") || text.equals("null"));
  }
}
