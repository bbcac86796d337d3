package keenward.files.zonelist;

/**
 * What has to be said about a row of a list.
 *
 * @param row number of the row in the file; 0 for the file as a whole
 * @param column head of the column, or its letter; empty for the row as a whole
 * @param kind how sure it is
 * @param text what was done, with the words of the list
 */
public record ListNote(int row, String column, Kind kind, String text) {

  /** How sure something is. */
  public enum Kind {
    /** How the list was read. */
    READ("read"),
    /** Something that the list does not say, or says in doubtful words: check it. */
    GUESS("guess"),
    /** Something that could not be used, and where it was kept. */
    PROBLEM("problem");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** In words. */
    public String word() {
      return word;
    }
  }

  /** One line for people. */
  public String message() {
    StringBuilder line = new StringBuilder();
    line.append(row > 0 ? "row " + row : "");
    if (!column.isEmpty()) {
      line.append(line.isEmpty() ? "" : ", ").append(column);
    }
    line.append(line.isEmpty() ? "" : ": ");
    return line.append(kind.word()).append(": ").append(text).toString();
  }
}
