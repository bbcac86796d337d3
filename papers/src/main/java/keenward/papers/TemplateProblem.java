package keenward.papers;

/** A template that cannot be used: somebody's own, since those that ship are tested. */
public final class TemplateProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String template;
  private final int line;
  private final String what;

  /**
   * A problem.
   *
   * @param template file name of the template
   * @param line line in it, from 1; 0 when not known
   * @param what what is the matter, and what was expected
   */
  public TemplateProblem(String template, int line, String what) {
    super(template + ":" + line + ":1: " + what);
    this.template = template;
    this.line = line;
    this.what = what;
  }

  /** File name of the template. */
  public String template() {
    return template;
  }

  /** Line in it, from 1; 0 when not known. */
  public int line() {
    return line;
  }

  /** What is the matter. */
  public String what() {
    return what;
  }
}
