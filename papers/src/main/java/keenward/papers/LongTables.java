package keenward.papers;

/**
 * Cuts long tables into groups of rows. The renderer looks at every row of a group for each of
 * them, so a table of thousands in one group would take hours; the groups look like one table on
 * paper.
 */
final class LongTables {

  private static final int ROWS_A_GROUP = 30;
  private static final String ROW_ENDS = "</tr>";
  private static final String GROUP_BEGINS = "<tbody>";
  private static final String GROUP_ENDS = "</tbody>";

  private LongTables() {}

  /** The same XHTML with the rows of every {@code tbody} in groups. */
  static String cut(String xhtml) {
    StringBuilder cut = new StringBuilder(xhtml.length() + 1024);
    int done = 0;
    int begins = xhtml.indexOf(GROUP_BEGINS);
    while (begins >= 0) {
      int ends = xhtml.indexOf(GROUP_ENDS, begins);
      int rows = 0;
      for (int row = xhtml.indexOf(ROW_ENDS, begins);
          row >= 0 && row < ends;
          row = xhtml.indexOf(ROW_ENDS, row + 1)) {
        rows++;
        int next = xhtml.indexOf(ROW_ENDS, row + 1);
        if (rows % ROWS_A_GROUP == 0 && next >= 0 && next < ends) {
          cut.append(xhtml, done, row + ROW_ENDS.length()).append(GROUP_ENDS).append(GROUP_BEGINS);
          done = row + ROW_ENDS.length();
        }
      }
      begins = ends < 0 ? -1 : xhtml.indexOf(GROUP_BEGINS, ends);
    }
    return cut.append(xhtml, done, xhtml.length()).toString();
  }
}
