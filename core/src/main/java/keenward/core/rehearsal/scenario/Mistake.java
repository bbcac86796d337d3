package keenward.core.rehearsal.scenario;

/** Ends the reading of a line of a script; never leaves the parser. */
final class Mistake extends RuntimeException {

  private static final long serialVersionUID = 1L;

  final int column;
  final String what;
  final String expected;

  Mistake(int column, String what, String expected) {
    super(what);
    this.column = column;
    this.what = what;
    this.expected = expected;
  }
}
