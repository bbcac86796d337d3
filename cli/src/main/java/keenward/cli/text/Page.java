package keenward.cli.text;

import java.util.List;

/** Text being written, line by line, wrapped for a terminal. */
public final class Page {

  private static final int WIDTH = 100;

  private final StringBuilder text = new StringBuilder();

  /** A line as it is. */
  public Page line(String line) {
    text.append(line).append('\n');
    return this;
  }

  /** An empty line. */
  public Page gap() {
    return line("");
  }

  /** A heading, underlined. */
  public Page heading(String heading) {
    if (!text.isEmpty()) {
      gap();
    }
    return line(heading).line("-".repeat(heading.codePointCount(0, heading.length())));
  }

  /** A paragraph, every line of it indented. */
  public Page paragraph(int indent, String words) {
    return hanging(" ".repeat(indent), indent, words);
  }

  /** A paragraph that begins with a label and whose further lines are indented. */
  public Page hanging(String label, int indent, String words) {
    StringBuilder line = new StringBuilder(label);
    boolean fresh = true;
    for (String word : words.strip().split("\\s+", -1)) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line.setLength(0);
        line.append(" ".repeat(indent));
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    return line(line.toString());
  }

  /** Rows in columns, each as wide as its widest cell; the last one is wrapped. */
  public Page table(List<List<String>> rows) {
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int column = 0; column < row.size(); column++) {
        widths[column] = Math.max(widths[column], row.get(column).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder label = new StringBuilder("  ");
      for (int column = 0; column < row.size() - 1; column++) {
        String cell = row.get(column);
        label.append(cell).append(" ".repeat(widths[column] - cell.length() + 2));
      }
      hanging(label.toString(), Math.min(label.length(), WIDTH / 2), row.getLast());
    }
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
