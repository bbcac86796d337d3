package keenward.files.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import keenward.core.rules.CheckInput;
import keenward.core.rules.CheckResult;
import keenward.core.rules.Finding;
import keenward.core.rules.Severity;
import keenward.core.rules.catalogue.Checks;
import keenward.files.panel.PanelDescriptionReader;
import keenward.files.plan.PlanReading;
import keenward.files.plan.SitePlanReader;
import org.junit.jupiter.api.Test;

/** The demo sites are sound but for the faults that they are meant to show. */
class DemoSitesTest {

  private static final Path DEMO = Path.of("..", "demo");
  private static final LocalDate DAY = LocalDate.of(2027, 1, 15);

  @Test
  void theBakeryHasItsTwoErrorsAndNoOther() throws IOException {
    assertThat(check("bakery/quayside-bakery.site.yaml").findings())
        .filteredOn(finding -> finding.severity() == Severity.ERROR)
        .extracting(DemoSitesTest::line)
        .containsExactlyInAnyOrder(
            "PWR-01 supplies / Main / battery", "ENT-01 zones / 2 / response");
  }

  @Test
  void theBoathouseHasItsEightMistakes() throws IOException {
    List<Finding> findings = check("boathouse/weir-lane-boathouse.site.yaml").findings();
    assertThat(findings)
        .filteredOn(finding -> !finding.code().startsWith("CAP"))
        .extracting(DemoSitesTest::line)
        .containsExactlyInAnyOrder(
            "SUR-01 floors / Ground / openings / Workshop window",
            "ADR-02 devices / Workshop motion / serial",
            "PWR-02 supplies / Main / rating",
            "TIM-01 panel / entry delays / 1",
            "LOP-01 zones / 2 / resistors",
            "RSP-01 zones / 7 / response",
            "FIR-01 zones / 11 / bypass",
            "USR-01 users / 3 / role");
  }

  @Test
  void theClinicHasItsFourFaultsAndNoOther() throws IOException {
    List<Finding> findings =
        check("clinic/heron-lane-vets.site.yaml", "samphire-128.panel.yaml").findings();
    assertThat(findings)
        .extracting(DemoSitesTest::line)
        .containsExactlyInAnyOrder(
            "FIR-04 devices / Drug store smoke / supply",
            "PWR-04 devices / Landing sounder / minimum voltage",
            "RAD-01 devices / Archive door contact / serial",
            "LAB-01 zones / 63 / name");
  }

  private static String line(Finding finding) {
    return finding.code() + " " + finding.place();
  }

  private static CheckResult check(String site) throws IOException {
    return check(site, "marram-32.panel.yaml");
  }

  private static CheckResult check(String site, String description) throws IOException {
    PlanReading reading = SitePlanReader.read(site, Files.readAllBytes(DEMO.resolve(site)));
    assertThat(reading.problems()).isEmpty();
    Path panel = Path.of("..", "panels", description);
    CheckInput input =
        CheckInput.of(reading.plan().orElseThrow())
            .withPanel(
                PanelDescriptionReader.read(panel.toString(), Files.readAllBytes(panel))
                    .description()
                    .orElseThrow())
            .asOf(DAY);
    return Checks.run(input);
  }
}
