package keenward.cli.text;

import keenward.core.plan.MissingFact;
import keenward.core.proof.Caution;
import keenward.core.proof.ExpectedSignal;
import keenward.core.proof.Phase;
import keenward.core.proof.TestPlan;
import keenward.core.proof.TestStep;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/** What to test, in the order of a visit. */
public final class TestPlanText {

  private static final int INDENT = 6;

  private TestPlanText() {}

  /** The whole page. */
  public static String of(SiteFile site, TestPlan plan) {
    Page page = new Page();
    page.heading("Test plan: " + site.plan().site().name());
    plan.notes().forEach(note -> page.hanging("  ", 2, note));
    @Nullable Phase phase = null;
    for (TestStep step : plan.steps()) {
      if (step.phase() != phase) {
        phase = step.phase();
        page.heading(phase.words());
      }
      step(page, step);
    }
    for (MissingFact open : plan.notAssessed()) {
      page.hanging("  ", 6, open.message());
    }
    return page.toString();
  }

  private static void step(Page page, TestStep step) {
    String number = "  " + step.number() + ". ";
    page.line(
        number
            + step.subject().label()
            + step.place()
                .map(place ->
                    " ("
                        + place.room()
                        + (place.floor().isEmpty() ? "" : ", " + place.floor())
                        + ")")
                .orElse(""));
    if (!step.precondition().isEmpty()) {
      page.hanging("      given   ", INDENT + 8, step.precondition());
    }
    page.hanging("      do      ", INDENT + 8, step.action());
    if (!step.keypadShows().isEmpty()) {
      page.hanging("      keypad  ", INDENT + 8, step.keypadShows());
    }
    step.time()
        .ifPresent(time ->
            page.hanging("      time    ", INDENT + 8, time.words() + " (" + time.source() + ")"));
    for (ExpectedSignal signal : step.signals()) {
      page.hanging("      centre  ", INDENT + 8, signal.text() + "  " + signal.words());
    }
    for (Caution caution : step.cautions()) {
      page.hanging("      CAUTION ", INDENT + 8, caution.text());
    }
  }
}
