package keenward.files.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.dialogue.description.Capacity;
import keenward.core.dialogue.description.Capacity.NumberRange;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Manners;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Finding;
import keenward.core.rules.Rule;
import keenward.core.rules.catalogue.Checks;
import keenward.core.rules.catalogue.RuleRegistry;
import keenward.files.plan.PlanReading;
import keenward.files.plan.SitePlanReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule's examples are plans that the reader takes; the broken one has the fault once, the others have none. */
class RuleExamplesTest {

  private static final LocalDate DAY = LocalDate.of(2027, 1, 15);
  private static final PanelDescription EIGHT_WIRED_ZONES = eightWiredZones();

  static List<Rule> rules() {
    return RuleRegistry.all();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void findsTheBrokenExampleOnceAndNothingElse(Rule rule) {
    List<Finding> findings = check(rule, "broken", rule.card().brokenExample());
    assertThat(findings).extracting(Finding::code).as("%s", findings).containsExactly(rule.card().code());
    assertThat(findings.getFirst().what()).endsWith(".");
    assertThat(findings.getFirst().remedy()).endsWith(".");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void findsNothingInTheMendedExample(Rule rule) {
    assertThat(check(rule, "mended", rule.card().mendedExample())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void findsNoSuchFaultInTheNearMiss(Rule rule) {
    rule.card()
        .nearMiss()
        .ifPresent(
            text ->
                assertThat(check(rule, "near miss", text))
                    .filteredOn(finding -> finding.severity() == rule.card().severity())
                    .extracting(Finding::code)
                    .doesNotContain(rule.card().code()));
  }

  private static List<Finding> check(Rule rule, String which, String text) {
    PlanReading reading =
        SitePlanReader.read(
            rule.card().code() + " " + which, text.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.problems()).as(text).isEmpty();
    CheckInput input = CheckInput.of(reading.plan().orElseThrow()).asOf(DAY);
    return Checks.run(
            text.contains("panel of eight wired zones")
                ? input.withPanel(EIGHT_WIRED_ZONES, Map.of())
                : input)
        .findings();
  }

  private static PanelDescription eightWiredZones() {
    Capacity capacity =
        new Capacity(
            Map.of("wired", new NumberRange(1, 8)),
            Map.of(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            List.of(),
            OptionalInt.empty());
    Leaving leaving = new Leaving("power lost", Leaving.Saves.NOTHING, "idle", 0, false, true);
    return new PanelDescription(
        "Eight",
        "menu tree",
        List.of(),
        new KeyMeanings(Map.of(), Map.of(), Map.of(), 0),
        capacity,
        List.of(),
        List.of(),
        Map.of(),
        List.of(),
        "idle",
        Map.of(),
        new Manners(true, Optional.empty(), 0, leaving, 0, List.of()),
        List.of());
  }
}
