package keenward.core.rehearsal.planned;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import keenward.core.Golden;
import keenward.core.building.Building;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.scenario.Highlights;
import keenward.core.rehearsal.scenario.ParsedScript;
import keenward.core.rehearsal.scenario.Rehearsal;
import keenward.core.rehearsal.scenario.ScriptParser;
import keenward.core.rehearsal.scenario.ScriptProblem;
import org.junit.jupiter.api.Test;

class StandardScenariosTest {

  @Test
  void suggestsWhatIsWorthSeeing() {
    StringBuilder text = new StringBuilder();
    SitePlan plan = Plans.workshop();
    for (StandardScenario scenario : scenarios(plan)) {
      text.append("== ").append(scenario.name()).append('\n');
      text.append("   ").append(scenario.reason()).append('\n');
      text.append(scenario.script());
      text.append("-> ").append(played(plan, scenario).text()).append("\n\n");
    }
    Golden.assertSame(
        Path.of("src/test/resources/rehearsal/standard-scenarios.txt"), text.toString());
  }

  @Test
  void findsAnInstantZoneOnTheWayToTheKeypad() {
    SitePlan plan = Plans.workshop();
    StandardScenario day = named(plan, "a usual day, mon");
    assertThat(day.script())
        .contains("day 2 07:00:00 open \"Yard door\" for 3 s")
        .contains("day 2 07:00:06 violate \"Passage\" for 2 s");
    // Leaving: the alarm comes in the exit time, while Rosa is still in the passage.
    assertThat(played(plan, day).alarm().orElseThrow().clock()).isEqualTo("18:00:02");
  }

  @Test
  void showsWhenABurglarIsSeenHeardAndReported() {
    SitePlan plan = Plans.workshop();
    Highlights highlights = played(plan, named(plan, "Street door: a burglar comes in"));
    // Entry delay 45 s, abort window 20 s.
    assertThat(highlights.text()).isEqualTo("alarm 23:00:45, heard 23:00:45, reported 23:01:05");
  }

  @Test
  void servesAPlanOfThreeZones() {
    SitePlan plan = Plans.threeZones();
    assertThat(scenarios(plan))
        .extracting(StandardScenario::name)
        .containsExactly(
            "System: armed away, but nobody leaves",
            "Door: left open on leaving",
            "Door: code in the last seconds",
            "Door: code too late",
            "Door: a burglar comes in",
            "Inside: somebody inside who used no door",
            "Inside: lid opened by night",
            "Button: pressed under threat",
            "mains fails for longer than the delay",
            "Door: lid opened by day");
    for (StandardScenario scenario : scenarios(plan)) {
      played(plan, scenario);
    }
  }

  @Test
  void servesAPlanWithoutZones() {
    assertThat(scenarios(PlanBuilder.site().build()))
        .extracting(StandardScenario::name)
        .containsExactly("mains fails for longer than the delay");
  }

  @Test
  void writesScriptsThatCanBeReadWhateverThingsAreCalled() {
    for (int seed = 0; seed < 100; seed++) {
      SitePlan plan = Plans.random(new Random(seed));
      List<StandardScenario> scenarios = scenarios(plan);
      assertThat(scenarios).as("seed %d", seed).isEqualTo(scenarios(plan));
      assertThat(scenarios).extracting(StandardScenario::name).doesNotHaveDuplicates();
      for (StandardScenario scenario : scenarios) {
        try {
          played(plan, scenario);
        } catch (RuntimeException | AssertionError broken) {
          throw new AssertionError("seed " + seed + ": " + scenario, broken);
        }
      }
    }
  }

  @Test
  void rehearsesTheFirstOfManyZonesAlikeAndSaysSo() {
    PlanBuilder plan = PlanBuilder.site();
    for (int zone = 1; zone <= 20; zone++) {
      plan.zone(zone, "Button " + zone, ZoneResponse.HOLD_UP);
    }
    SitePlan built = plan.build();
    StandardScenarios.Suggested suggested =
        StandardScenarios.of(built, SystemModels.from(built), Building.of(built));
    assertThat(suggested.scenarios())
        .filteredOn(each -> each.name().endsWith("pressed under threat"))
        .hasSize(12);
    assertThat(suggested.notRehearsed())
        .singleElement()
        .extracting(Assumption::text)
        .asString()
        .contains("8 more are alike, from zone 13 on");
  }

  private static List<StandardScenario> scenarios(SitePlan plan) {
    return StandardScenarios.of(plan, SystemModels.from(plan), Building.of(plan)).scenarios();
  }

  private static StandardScenario named(SitePlan plan, String name) {
    return scenarios(plan).stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Highlights played(SitePlan plan, StandardScenario scenario) {
    var model = SystemModels.from(plan).model();
    ParsedScript parsed = ScriptParser.parse(scenario.script(), model);
    assertThat(parsed.problems())
        .extracting(ScriptProblem::text)
        .as(scenario.name() + "\n" + scenario.script())
        .isEmpty();
    return Highlights.of(Rehearsal.run(model, parsed.script().orElseThrow()).timeline());
  }
}
