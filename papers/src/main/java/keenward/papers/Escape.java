package keenward.papers;

/** Makes text safe inside elements and quoted attributes. */
final class Escape {

  private Escape() {}

  /**
   * Characters that XML can't hold, and marks that turn the direction of what follows, become a
   * replacement mark.
   */
  static String html(String raw) {
    StringBuilder escaped = new StringBuilder(raw.length() + 16);
    raw.codePoints()
        .forEach(point -> {
          switch (point) {
            case '&' -> escaped.append("&amp;");
            case '<' -> escaped.append("&lt;");
            case '>' -> escaped.append("&gt;");
            case '"' -> escaped.append("&quot;");
            case '\'' -> escaped.append("&#39;");
            default -> escaped.appendCodePoint(isPrintable(point) ? point : 0xFFFD);
          }
        });
    return escaped.toString();
  }

  private static boolean isPrintable(int point) {
    return isXml(point) && !isDirectionMark(point);
  }

  private static boolean isXml(int point) {
    return point == '\n'
        || point == '\t'
        || (point >= 0x20 && point <= 0xD7FF && !(point >= 0x7F && point <= 0x9F))
        || (point >= 0xE000 && point <= 0xFFFD)
        || (point >= 0x10000 && point <= 0x10FFFF);
  }

  /**
   * Unicode bidirectional embeddings, overrides and isolates: a name could make a line read
   * backwards.
   */
  private static boolean isDirectionMark(int point) {
    return (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069);
  }
}
