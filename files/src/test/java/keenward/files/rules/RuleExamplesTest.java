package keenward.files.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.plan.SitePlan;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Finding;
import keenward.core.rules.Rule;
import keenward.core.rules.catalogue.Checks;
import keenward.core.rules.catalogue.RuleRegistry;
import keenward.files.panel.PanelDescriptionReader;
import keenward.files.plan.PlanReading;
import keenward.files.plan.SitePlanReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each rule's examples are plans that the reader takes; the broken one has the fault once, the
 * others have none.
 */
class RuleExamplesTest {

  private static final LocalDate DAY = LocalDate.of(2027, 1, 15);
  private static final Path PANELS = Path.of("..", "panels");

  static List<Rule> rules() {
    return RuleRegistry.all();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void findsTheBrokenExampleOnceAndNothingElse(Rule rule) throws IOException {
    List<Finding> findings = check(rule, "broken", rule.card().brokenExample());
    assertThat(findings)
        .extracting(Finding::code)
        .as("%s", findings)
        .containsExactly(rule.card().code());
    assertThat(findings.getFirst().what()).endsWith(".");
    assertThat(findings.getFirst().remedy()).endsWith(".");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void findsNothingInTheMendedExample(Rule rule) throws IOException {
    assertThat(check(rule, "mended", rule.card().mendedExample())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void findsNoSuchFaultInTheNearMiss(Rule rule) throws IOException {
    assertThat(rule.card().nearMiss()).isNotBlank().isNotEqualTo(rule.card().mendedExample());
    assertThat(check(rule, "near miss", rule.card().nearMiss()))
        .filteredOn(finding -> finding.severity() == rule.card().severity())
        .extracting(Finding::code)
        .doesNotContain(rule.card().code());
  }

  private static List<Finding> check(Rule rule, String which, String text) throws IOException {
    PlanReading reading =
        SitePlanReader.read(
            rule.card().code() + " " + which, text.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.problems()).as(text).isEmpty();
    SitePlan plan = reading.plan().orElseThrow();
    CheckInput input = CheckInput.of(plan).asOf(DAY);
    Optional<String> panel = plan.panel().description().find();
    return Checks.run(panel.isPresent() ? input.withPanel(panel(panel.get())) : input).findings();
  }

  private static PanelDescription panel(String name) throws IOException {
    Path file = PANELS.resolve(name.toLowerCase(Locale.ROOT).replace(' ', '-') + ".panel.yaml");
    return PanelDescriptionReader.read(file.toString(), Files.readAllBytes(file))
        .description()
        .orElseThrow();
  }
}
