package keenward.files.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import keenward.files.Problem;

/** Gathers the problems of one file: in file order, and no more than a person would read. */
public final class ProblemList {

  /** The most problems of one file that are listed; a last line says how many more there were. */
  public static final int MOST = 200;

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private int more;

  /** An empty list for a file. */
  public ProblemList(String file) {
    this.file = file;
  }

  /** Adds a problem at the start of a span. */
  public void add(Span place, String what, String expected, String remedy) {
    add(new Problem(file, place.line(), place.column(), what, expected, remedy));
  }

  /** Adds a problem. */
  public void add(Problem problem) {
    if (problems.size() < MOST) {
      problems.add(problem);
    } else {
      more++;
    }
  }

  /** Whether nothing was added. */
  public boolean isEmpty() {
    return problems.isEmpty();
  }

  /** Whether further problems are only counted, so that nobody has to word them. */
  public boolean isFull() {
    return problems.size() == MOST;
  }

  /** How many were added, listed or not. */
  public int size() {
    return problems.size() + more;
  }

  /** The problems by line and column, those at one place in the order of adding. */
  public List<Problem> inFileOrder() {
    List<Problem> sorted = new ArrayList<>(problems);
    sorted.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
    if (more > 0) {
      Problem last = sorted.getLast();
      sorted.add(
          new Problem(
              file, last.line(), last.column(), more + " more problems are not listed", "", ""));
    }
    return List.copyOf(sorted);
  }
}
