package keenward.core.rules.capacity;

import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.UserRole.USER;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.lines;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import keenward.core.dialogue.description.Capacity;
import keenward.core.dialogue.description.Capacity.NumberRange;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.PlanBuilder;
import keenward.core.rules.CheckInput;
import keenward.core.rules.PanelOfTests;
import keenward.core.rules.Report;
import org.junit.jupiter.api.Test;

class PlanExceedsPanelTest {

  private final PlanExceedsPanel rule = new PlanExceedsPanel();

  private Report on(Map<String, NumberRange> zones, Map<String, Integer> counts, PlanBuilder plan) {
    Capacity capacity =
        new Capacity(
            zones, counts, OptionalInt.empty(), OptionalInt.empty(), List.of(), OptionalInt.empty());
    return run(
        rule, CheckInput.of(plan.build()).withPanel(PanelOfTests.holding(capacity), Map.of()));
  }

  private static PlanBuilder zones() {
    return PlanBuilder.site()
        .device("Wired", MOTION, DeviceBuilder::wired)
        .device("Radio", MOTION, DeviceBuilder::radio)
        .zone(9, "Wired", INSTANT, zone -> zone.device("Wired"))
        .zone(9 + 8, "Radio", INSTANT, zone -> zone.device("Radio"))
        .zone(25, "Either", INSTANT);
  }

  @Test
  void findsNumbersOutsideTheirKindOfConnection() {
    Map<String, NumberRange> ranges =
        Map.of("wired", new NumberRange(1, 8), "wireless", new NumberRange(9, 24));

    assertThat(lines(on(ranges, Map.of(), zones())))
        .anySatisfy(
            line ->
                assertThat(line)
                    .isEqualTo(
                        "error at zones / 9: Zone 9 'Wired' is beyond 'Test panel', which has wired zones 1 to 8."))
        .anySatisfy(line -> assertThat(line).startsWith("error at zones / 25: Zone 25 'Either' is beyond"))
        .hasSize(2);
  }

  @Test
  void findsAConnectionThatThePanelDoesNotHave() {
    assertThat(lines(on(Map.of("wired", new NumberRange(1, 32)), Map.of(), zones())))
        .containsExactly(
            "error at zones / 17: Zone 17 'Radio' is wireless, and 'Test panel' has no wireless zones.");
  }

  @Test
  void findsMoreThanItHolds() {
    PlanBuilder plan =
        PlanBuilder.site()
            .partition("A", 1)
            .partition("B", 2)
            .user(1, "Ines", USER)
            .zone(1, "Wired", INSTANT);

    assertThat(
            lines(
                on(
                    Map.of("wired", new NumberRange(1, 8)),
                    Map.of("partitions", 1, "users", 1),
                    plan)))
        .containsExactly("error at partitions: The plan has 2 partitions, and 'Test panel' holds 1.");
  }

  @Test
  void doesNotAssessWithoutDescriptionOrItsZones() {
    assertThat(notAssessed(rule, PlanBuilder.site().zone(1, "A", INSTANT)))
        .containsExactly(
            "panel / description: whether the panel holds the plan, since no panel description is named;"
                + " add: panel: { description: ... }");
    assertThat(notAssessed(on(Map.of(), Map.of(), zones()))).hasSize(1);
  }
}
