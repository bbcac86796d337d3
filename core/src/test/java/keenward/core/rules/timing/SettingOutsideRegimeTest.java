package keenward.core.rules.timing;

import static keenward.core.plan.Standard.CP_01;
import static keenward.core.plan.Standard.EN50131;
import static keenward.core.plan.Standard.UL1023;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.Fact;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Regime;
import keenward.core.plan.Standard;
import keenward.core.rules.Finding;
import org.junit.jupiter.api.Test;

/**
 * The figures are those of the published texts: CP-01 exit time 45 s to 255 s and abort window 15 s
 * to 45 s (read in trade articles), EN 50131-1 entry time at most 45 s and UL 1023 exit delay at
 * most 60 s (from memory).
 */
class SettingOutsideRegimeTest {

  private final SettingOutsideRegime rule = new SettingOutsideRegime();

  @Test
  void findsAValueBelowAndAboveTheRange() {
    PlanBuilder plan =
        PlanBuilder.site()
            .regime(CP_01, "2010")
            .panel(panel -> panel.exitTime("44 s").abortWindow("46 s").swingerLimit(7));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at panel / exit time: Exit time is 44 s; cp-01 allows 45 s to 255 s.",
            "error at panel / abort window: Abort window is 46 s; cp-01 (2010 edition onward) allows 0"
                + " (off) or 15 s to 45 s.",
            "error at panel / swinger limit: Swinger limit is 7; cp-01 (2010 edition onward) allows 1 to 6.");
  }

  @Test
  void passesTheEndsOfTheRange() {
    PlanBuilder plan =
        PlanBuilder.site()
            .regime(CP_01, "2010")
            .panel(panel -> panel.exitTime("45 s").abortWindow("0 s").swingerLimit(6));

    assertThat(findings(rule, plan)).isEmpty();
  }

  @Test
  void saysWhereRegimesDisagreeAndLetsTheStrictestRule() {
    PlanBuilder plan =
        PlanBuilder.site()
            .regime(CP_01, "2010")
            .grade(EN50131, 2)
            .panel(panel -> panel.entryDelay(1, "30 s").entryDelay(2, "60 s"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at panel / entry delays / 2: Entry delay 2 is 60 s; en50131 allows at most 45 s,"
                + " though cp-01 allows 30 s to 4 min.");
    assertThat(run(rule, plan).findings())
        .extracting(Finding::remedy)
        .containsExactly("Set it to 30 s to 45 s.");
  }

  @Test
  void warnsWhereOnlyTheEditionDecides() {
    PlanBuilder plan = PlanBuilder.site().regime(CP_01).panel(panel -> panel.swingerLimit(4));

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at panel / swinger limit: Swinger limit is 4; cp-01 (editions before 2010) allows 1"
                + " to 2, though cp-01 (2010 edition onward) allows 1 to 6.");
  }

  @Test
  void judgesDefaultsToo() {
    PlanBuilder plan = PlanBuilder.site().regime(UL1023).panel(panel -> panel.exitTime("90 s"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at panel / exit time: Exit time is 90 s; ul1023 (classic listing text) allows at most 60 s.");
    assertThat(run(rule, plan).judgedCount()).as("entry delay by default, exit time").isEqualTo(2);
  }

  @Test
  void doesNotAssessWithoutARegimeOrByOneWithoutFigures() {
    assertThat(notAssessed(rule, PlanBuilder.site()))
        .containsExactly(
            "regime: delays, windows and limits, since the plan names no regime; add: regime: cp-01 2010");
    PlanBuilder other =
        PlanBuilder.site()
            .regime(new Regime(Standard.OTHER, Fact.of("2019"), Fact.missing(), "island rules"));
    assertThat(notAssessed(rule, other))
        .singleElement()
        .asString()
        .contains("'island rules 2019', since the program holds no figures of it");
    assertThat(run(rule, other).judgedCount()).isZero();
  }
}
