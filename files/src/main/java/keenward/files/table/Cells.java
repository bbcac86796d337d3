package keenward.files.table;

import keenward.files.QuotedText;

/** What stands in a cell. */
final class Cells {

  private static final String FORMULA_STARTS = "=+-@\t\r";

  /** What a spreadsheet takes for "this is text", and does not show. */
  private static final char TEXT_MARK = '\'';

  private Cells() {}

  /** A cell as it came: blanks of every kind as one blank, what does not print made visible. */
  static String tidy(String raw) {
    StringBuilder tidy = new StringBuilder(raw.length());
    raw.codePoints()
        .forEach(point -> {
          if (point == '\u00AD' || point == 0xFEFF || point == 0x200B) {
            return;
          }
          if (Character.isWhitespace(point) || Character.isSpaceChar(point)) {
            if (!tidy.isEmpty() && tidy.charAt(tidy.length() - 1) != ' ') {
              tidy.append(' ');
            }
          } else if (QuotedText.isInvisible(point)) {
            tidy.append(QuotedText.name(point));
          } else {
            tidy.appendCodePoint(point);
          }
        });
    return tidy.toString().strip();
  }

  /** A text without the mark that {@link #harmless} put before it. */
  static String unmarked(String text) {
    return isMarked(text) ? text.substring(1) : text;
  }

  /**
   * A text that a spreadsheet shows and does not run: one that could be a formula gets a mark
   * before it, which {@link #unmarked} takes off again.
   */
  static String harmless(String text) {
    boolean couldRun = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
    return couldRun || isMarked(text) ? TEXT_MARK + text : text;
  }

  private static boolean isMarked(String text) {
    return text.length() > 1
        && text.charAt(0) == TEXT_MARK
        && (FORMULA_STARTS.indexOf(text.charAt(1)) >= 0 || text.charAt(1) == TEXT_MARK);
  }
}
