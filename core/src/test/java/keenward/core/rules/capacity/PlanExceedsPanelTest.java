package keenward.core.rules.capacity;

import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.DeviceKind.MOTION;
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
import keenward.core.dialogue.planned.CannotExpress;
import keenward.core.dialogue.planned.PlannedMemory;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.PlanBuilder;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Finding;
import keenward.core.rules.PanelOfTests;
import keenward.core.rules.Report;
import org.junit.jupiter.api.Test;

class PlanExceedsPanelTest {

  private static final Capacity ONE_KEYPAD =
      new Capacity(
          Map.of("wired", new NumberRange(1, 8)),
          Map.of("keypads", 1),
          OptionalInt.empty(),
          OptionalInt.empty(),
          List.of(),
          OptionalInt.empty());

  private final PlanExceedsPanel rule = new PlanExceedsPanel();

  private Report on(PlanBuilder plan) {
    return run(rule, CheckInput.of(plan.build()).withPanel(PanelOfTests.holding(ONE_KEYPAD)));
  }

  @Test
  void findsEverythingThatThePanelsMemoryCannotHold() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Eye", MOTION, DeviceBuilder::wired)
            .zone(9, "Far", INSTANT, zone -> zone.device("Eye"));
    List<CannotExpress> cannot =
        PlannedMemory.from(plan.build(), PanelOfTests.holding(ONE_KEYPAD)).cannotExpress();

    assertThat(cannot).isNotEmpty();
    assertThat(on(plan).findings())
        .extracting(Finding::place)
        .containsExactlyElementsOf(cannot.stream().map(CannotExpress::place).toList());
    assertThat(lines(on(plan)))
        .anySatisfy(line ->
            assertThat(line)
                .startsWith("error at ")
                .endsWith(": Zone 9 is wired; expected wired zones 1 to 8."));
  }

  @Test
  void findsMoreKeypadsThanItConnects() {
    PlanBuilder plan = PlanBuilder.site().device("A", KEYPAD);
    assertThat(lines(on(plan)))
        .noneMatch(line -> line.contains("keypad,") || line.contains("connects"));

    assertThat(lines(on(plan.device("B", KEYPAD))))
        .contains("error at devices: The plan has 2 keypads, and 'Test panel' connects 1.");
  }

  @Test
  void doesNotAssessWithoutADescription() {
    assertThat(notAssessed(rule, PlanBuilder.site().zone(1, "A", INSTANT)))
        .containsExactly(
            "panel / description: whether the panel holds the plan, since no panel description is named;"
                + " add: panel: { description: ... }");
  }
}
