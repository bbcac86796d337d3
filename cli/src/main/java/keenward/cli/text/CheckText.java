package keenward.cli.text;

import java.util.Locale;
import keenward.core.rules.CheckResult;
import keenward.core.rules.Finding;
import keenward.core.rules.NotAssessed;
import keenward.usecases.site.SiteFile;

/** Findings, worst first, and what could not be judged. */
public final class CheckText {

  private CheckText() {}

  /** The whole page. */
  public static String of(SiteFile site, CheckResult result) {
    Page page = new Page();
    page.heading(site.plan().site().name() + ": " + summary(result));
    for (Finding finding : result.findings()) {
      page.gap()
          .line(
              finding.severity().word().toUpperCase(Locale.ROOT)
                  + "  "
                  + finding.code()
                  + "  "
                  + site.place(finding.place()))
          .paragraph(2, finding.what())
          .hanging("  > ", 4, finding.remedy());
    }
    if (!result.notAssessed().isEmpty()) {
      page.heading("Not assessed");
      for (NotAssessed open : result.notAssessed()) {
        page.hanging("  " + open.code() + "  ", 10, open.why())
            .hanging("          add: ", 15, open.lineToAdd());
      }
    }
    return page.toString();
  }

  /** The findings counted; without any, how many rules passed. */
  public static String summary(CheckResult result) {
    return result.summary()
        + (result.findings().isEmpty() ? ", " + result.passed().size() + " rules passed" : "");
  }
}
