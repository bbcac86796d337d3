package keenward.files.table;

import java.util.List;

/**
 * A table as it came.
 *
 * @param rows rows that hold anything, in order
 * @param notes how it was read, in words: encoding, separator, sheet
 */
public record Table(List<TableRow> rows, List<String> notes) {

  public Table {
    rows = List.copyOf(rows);
    notes = List.copyOf(notes);
  }

  /** How many columns its widest row has. */
  public int width() {
    return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
  }
}
