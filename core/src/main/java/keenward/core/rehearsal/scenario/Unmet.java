package keenward.core.rehearsal.scenario;

/**
 * An expectation that the system did not meet.
 *
 * @param line line of the script
 * @param expected what was expected
 * @param found what happened instead
 */
public record Unmet(int line, String expected, String found) {

  /** As one line, without the name of the file. */
  public String text() {
    return line + ": expected " + expected + "; " + found;
  }
}
