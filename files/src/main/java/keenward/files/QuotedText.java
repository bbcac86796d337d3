package keenward.files;

/** Shows text from a file inside a message: short, on one line, with nothing invisible in it. */
public final class QuotedText {

  private static final int LONGEST = 60;

  private QuotedText() {}

  /** The text in double quotes, cut after 60 characters, with invisible characters as U+XXXX. */
  public static String of(String text) {
    int length = text.codePointCount(0, text.length());
    if (length <= LONGEST) {
      return '"' + visible(text) + '"';
    }
    String head = text.substring(0, text.offsetByCodePoints(0, LONGEST));
    return '"' + visible(head) + "...\" (" + length + " characters)";
  }

  /** The text with every character that does not print written as {@code <U+XXXX>}. */
  public static String visible(String text) {
    StringBuilder result = new StringBuilder(text.length());
    text.codePoints().forEach(codePoint -> appendVisible(result, codePoint));
    return result.toString();
  }

  private static void appendVisible(StringBuilder result, int codePoint) {
    if (isInvisible(codePoint)) {
      result.append('<').append(name(codePoint)).append('>');
    } else {
      result.appendCodePoint(codePoint);
    }
  }

  /** {@code U+0009} and the like. */
  public static String name(int codePoint) {
    return String.format("U+%04X", codePoint);
  }

  /** Whether a character is nothing a reader could see, or a blank that only looks like one. */
  public static boolean isInvisible(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED,
          Character.PRIVATE_USE ->
          true;
      case Character.SPACE_SEPARATOR -> codePoint != ' ';
      default -> false;
    };
  }
}
