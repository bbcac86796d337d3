package keenward.web;

import java.util.Locale;

/** The pages of a site, one a stage, in the order of the job. */
public enum Stage {
  /** What goes where. */
  PLAN("Plan"),
  /** What could be added to it. */
  SUGGEST("Suggest"),
  /** What is wrong with it. */
  FINDINGS("Findings"),
  /** What it draws. */
  POWER("Power"),
  /** How its radio is heard. */
  RADIO("Radio"),
  /** What it will do. */
  REHEARSAL("Rehearsal"),
  /** What to press. */
  ORDER("Key in"),
  /** Whether it happened. */
  TESTS("Prove"),
  /** What to leave. */
  PAPERS("Papers");

  private final String title;

  Stage(String title) {
    this.title = title;
  }

  /** Its name on the page. */
  public String title() {
    return title;
  }

  /** Its name in addresses, and of its template. */
  public String address() {
    return name().toLowerCase(Locale.ROOT);
  }
}
