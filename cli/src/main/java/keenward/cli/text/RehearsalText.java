package keenward.cli.text;

import keenward.core.rehearsal.planned.Assumption;
import keenward.core.rehearsal.scenario.Unmet;
import keenward.usecases.rehearse.RehearsedScenario;
import keenward.usecases.rehearse.SiteRehearsal;
import keenward.usecases.site.SiteFile;

/** Timelines with the reason of each row. */
public final class RehearsalText {

  private RehearsalText() {}

  /** The whole page. */
  public static String of(SiteFile site, SiteRehearsal rehearsal) {
    Page page = new Page();
    page.line(
        "A model of the plan under the stated rules, not of a panel's firmware: the walk test decides.");
    for (Assumption assumption : rehearsal.system().assumptions()) {
      page.hanging("assumed   ", 10, site.place(assumption.place()) + ": " + assumption.text());
    }
    for (RehearsedScenario scenario : rehearsal.scenarios()) {
      page.heading(scenario.name());
      if (!scenario.reason().isEmpty()) {
        page.paragraph(0, scenario.reason());
      }
      page.line(scenario.result().timeline().text(true).stripTrailing());
      for (Unmet unmet : scenario.result().unmet()) {
        page.line("NOT AS EXPECTED  " + unmet.text());
      }
    }
    return page.toString();
  }
}
