package keenward.files.table;

import java.util.List;

/**
 * A row of a table.
 *
 * @param number its number in the file: of its first line in a text file, of the row in a workbook;
 *     from 1
 * @param cells its cells, without blanks at their ends; empty ones are empty texts
 */
public record TableRow(int number, List<String> cells) {

  public TableRow {
    cells = List.copyOf(cells);
  }

  /** The cell in a column from 0; the empty text past the end. */
  public String cell(int column) {
    return column < cells.size() ? cells.get(column) : "";
  }

  /** Whether no cell holds anything. */
  public boolean isEmpty() {
    return cells.stream().allMatch(String::isEmpty);
  }
}
