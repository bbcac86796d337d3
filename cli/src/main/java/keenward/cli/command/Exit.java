package keenward.cli.command;

/** Exit codes of every command. */
final class Exit {

  /** All went well. */
  static final int FINE = 0;

  /**
   * It worked, and there is a finding of error level, an order that could not be proved, or an
   * unmet expectation.
   */
  static final int FINDINGS = 1;

  /** The input or the command line cannot be used. */
  static final int BAD_INPUT = 2;

  private Exit() {}
}
