package keenward.drawing.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes SVG 1.1 text, an element a line. Attributes go in pairs of name and value; numbers are
 * written to a hundredth of a pixel, so that the same drawing is the same text everywhere. Text and
 * attribute values are escaped here and nowhere else.
 */
public final class Svg {

  private final StringBuilder text = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element that holds others. */
  public Svg open(String name, Object... attributes) {
    tag(name, attributes);
    text.append(">\n");
    open.push(name);
    return this;
  }

  /** Closes the element opened last. */
  public Svg close() {
    String name = open.pop();
    indent();
    text.append("</").append(name).append(">\n");
    return this;
  }

  /** An element without content. */
  public Svg element(String name, Object... attributes) {
    tag(name, attributes);
    text.append("/>\n");
    return this;
  }

  /** An element that holds text only. */
  public Svg text(String name, String content, Object... attributes) {
    tag(name, attributes);
    text.append('>').append(escape(content)).append("</").append(name).append(">\n");
    return this;
  }

  /**
   * Words on one line.
   *
   * @param y the baseline
   * @param size of the letters, in pixels
   * @param anchor where {@code x} is: start, middle or end
   */
  public Svg label(
      String words, double x, double y, double size, boolean bold, String anchor, String fill) {
    return text(
        "text",
        words,
        "x",
        x,
        "y",
        y,
        "font-size",
        size,
        "font-weight",
        bold ? "bold" : "normal",
        "text-anchor",
        anchor,
        "fill",
        fill);
  }

  private void tag(String name, Object... attributes) {
    indent();
    text.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      text.append(' ').append(attributes[i]).append("=\"");
      Object value = attributes[i + 1];
      text.append(value instanceof Double number ? number(number) : escape(value.toString()));
      text.append('"');
    }
  }

  private void indent() {
    text.append(" ".repeat(open.size()));
  }

  /** The finished drawing. */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("elements are still open: " + open);
    }
    return text.toString();
  }

  /** A number to a hundredth, without needless zeros. */
  public static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /**
   * Text safe inside an element or a quoted attribute; characters that XML can't hold become a
   * replacement mark.
   */
  static String escape(String raw) {
    StringBuilder escaped = new StringBuilder(raw.length());
    raw.codePoints()
        .forEach(point -> {
          switch (point) {
            case '&' -> escaped.append("&amp;");
            case '<' -> escaped.append("&lt;");
            case '>' -> escaped.append("&gt;");
            case '"' -> escaped.append("&quot;");
            case '\'' -> escaped.append("&#39;");
            default -> escaped.appendCodePoint(isXmlText(point) ? point : 0xFFFD);
          }
        });
    return escaped.toString();
  }

  /** Char of XML 1.0, less line breaks and tabs, which a label can't show. */
  private static boolean isXmlText(int point) {
    return (point >= 0x20 && point <= 0xD7FF)
        || (point >= 0xE000 && point <= 0xFFFD)
        || (point >= 0x10000 && point <= 0x10FFFF);
  }
}
