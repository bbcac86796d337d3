package keenward.core.rehearsal.scenario;

/**
 * A mistake in a script.
 *
 * @param line line, from 1
 * @param column column, from 1, counted in characters
 * @param what what is wrong
 * @param expected what would be right
 */
public record ScriptProblem(int line, int column, String what, String expected) {

  /** As one line, without the name of the file. */
  public String text() {
    return line + ":" + column + ": " + what + "; expected " + expected;
  }
}
