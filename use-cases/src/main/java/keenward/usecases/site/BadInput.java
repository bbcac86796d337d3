package keenward.usecases.site;

import java.util.List;
import keenward.files.Problem;

/** A file cannot be used; every fault in it is said at once. */
public final class BadInput extends Exception {

  private static final long serialVersionUID = 1;

  private final transient List<Problem> problems;

  /**
   * A file with faults.
   *
   * @param problems the faults, in the order of the file; at least one
   */
  public BadInput(List<Problem> problems) {
    super(problems.getFirst().message());
    this.problems = List.copyOf(problems);
  }

  /** A file that cannot even be read. */
  public BadInput(String file, String what, String expected, String remedy) {
    this(List.of(new Problem(file, 1, 1, what, expected, remedy)));
  }

  /** Every fault as {@code FILE:LINE:COLUMN: what; expected ...; remedy}. */
  public List<String> messages() {
    return problems.stream().map(Problem::message).toList();
  }
}
