package keenward.usecases.sample;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import keenward.core.building.Building;
import keenward.core.plan.SitePlan;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Severity;
import keenward.core.rules.catalogue.Checks;
import keenward.files.plan.PlanReading;
import keenward.files.plan.SitePlanReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleSiteTest {

  private static SitePlan read(String text) {
    PlanReading reading = SitePlanReader.read("sample", text.getBytes(UTF_8));
    assertThat(reading.problems()).isEmpty();
    return reading.plan().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "2, 1", "3, 7", "64, 1", "64, 2", "999, 3", "1000, 3", "10000, 1"})
  void isAPlanWithSoManyZonesAndASoundDrawing(int zones, long seed) {
    SitePlan plan = read(SampleSite.of(zones, new Random(seed)));
    assertThat(plan.zones()).hasSize(zones);
    Building building = Building.of(plan);
    // A plan of more than 10,000 corners is not drawn, and says so.
    assertThat(building.problems()).isEmpty();
    assertThat(building.devices()).hasSameSizeAs(plan.devices());
  }

  @ParameterizedTest
  @CsvSource({"5, 1", "64, 1", "300, 2"})
  void hasNoFaultOfErrorLevel(int zones, long seed) {
    SitePlan plan = read(SampleSite.of(zones, new Random(seed)));
    assertThat(Checks.run(CheckInput.of(plan)).findings())
        .noneMatch(finding -> finding.severity() == Severity.ERROR);
  }

  @Test
  void theSameSeedGivesTheSameSiteAndAnotherSeedAnother() {
    String one = SampleSite.of(100, new Random(5));
    assertThat(SampleSite.of(100, new Random(5))).isEqualTo(one);
    assertThat(SampleSite.of(100, new Random(6))).isNotEqualTo(one);
  }

  @ParameterizedTest
  @CsvSource({"0", "-3", "10001"})
  void refusesNumbersOfZonesThatNoPlanCanHave(int zones) {
    assertThatThrownBy(() -> SampleSite.of(zones, new Random(1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 to 10000");
  }
}
