package keenward.files.table;

import java.util.List;
import java.util.Optional;
import keenward.files.Problem;

/**
 * What became of a table's file.
 *
 * @param table the table; empty when the file cannot be read as one
 * @param problems why it cannot
 */
public record TableReading(Optional<Table> table, List<Problem> problems) {

  public TableReading {
    problems = List.copyOf(problems);
  }

  static TableReading of(Table table) {
    return new TableReading(Optional.of(table), List.of());
  }

  static TableReading refused(Problem problem) {
    return new TableReading(Optional.empty(), List.of(problem));
  }
}
