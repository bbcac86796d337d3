package keenward.core.rules.timing;

import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class EntryDelayNotSetTest {

  private final EntryDelayNotSet rule = new EntryDelayNotSet();

  @Test
  void findsADelayThatIsNotSet() {
    PlanBuilder plan =
        PlanBuilder.site()
            .panel(panel -> panel.entryDelay(1, "30 s").entryDelay(2, "45 s"))
            .zone(4, "Side door", ENTRY_EXIT, zone -> zone.entryDelay(3));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 4 / entry delay: Zone 4 'Side door' starts entry delay 3, and the panel"
                + " section sets only 1 and 2.");
  }

  @Test
  void findsTheUnsaidFirstDelayWhereOnlyTheSecondIsSet() {
    PlanBuilder plan =
        PlanBuilder.site().panel(panel -> panel.entryDelay(2, "45 s")).zone(1, "Door", ENTRY_EXIT);

    assertThat(findings(rule, plan))
        .singleElement()
        .asString()
        .startsWith("error at panel / entry delays: Zone 1 'Door' starts entry delay 1");
  }

  @Test
  void passesTheDefaultDelayOfASiteThatSetsNone() {
    PlanBuilder plan = PlanBuilder.site().zone(1, "Door", ENTRY_EXIT).zone(2, "Hall", INSTANT);

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }
}
