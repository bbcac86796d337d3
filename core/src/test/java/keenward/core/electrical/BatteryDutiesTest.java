package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Regime;
import keenward.core.plan.Standard;
import keenward.core.plan.Supply;
import keenward.core.reference.ReferenceRows;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** reference/standby_duties.csv: most rows from memory, those of NFPA 72 from pages. */
class BatteryDutiesTest {
  @Test
  void hoursOfEachGradeAreThoseOfASupplyThatChargesItsBattery() {
    for (int grade = 1; grade <= 4; grade++) {
      BatteryDuty duty = only(BatteryDuties.of(List.of(en50131(grade)), supply(false)));
      assertThat(duty.standbyHours()).isEqualTo(published(grade, "standby, type A"));
      assertThat(duty.recharge().orElseThrow().hours())
          .isEqualTo(published(grade, "type A recharge to 80 %"));
      assertThat(duty.recharge().orElseThrow().share()).isEqualTo(0.8);
    }
  }

  @Test
  void aSignalledMainsFailureHalvesTheHoursOfTheHighGradesOnly() {
    assertThat(only(BatteryDuties.of(List.of(en50131(3)), supply(true))).standbyHours())
        .isEqualTo(30);
    assertThat(only(BatteryDuties.of(List.of(en50131(3)), supply(true))).source())
        .contains("grade 3: 60 h, halved since a mains failure is signalled");
    assertThat(only(BatteryDuties.of(List.of(en50131(2)), supply(true))).standbyHours())
        .isEqualTo(12);
  }

  /** UL 1023: 4 h then 4 min; NFPA 72 household: 24 h then 4 min, factor 1.2. */
  @Test
  void householdRegimesHaveTheirHours() {
    BatteryDuty burglary = only(BatteryDuties.of(List.of(of(Standard.UL1023)), supply(false)));
    assertThat(burglary.words()).isEqualTo("4 h at rest, then 4 min in alarm");
    BatteryDuty fire =
        only(BatteryDuties.of(List.of(of(Standard.NFPA72_HOUSEHOLD)), supply(false)));
    assertThat(fire.words()).isEqualTo("24 h at rest, then 4 min in alarm");
    assertThat(fire.ageAllowance()).isEqualTo(1.2);
  }

  @Test
  void whatCannotBeToldIsNotAssessedWithTheLineToAdd() {
    assertThat(open(List.of())).contains("add `regime: ul1023`");
    assertThat(open(List.of(of(Standard.CP_01)))).contains("no regime of the plan sets any");
    assertThat(open(List.of(of(Standard.EN50131)))).contains("add `regime: en50131 grade 2`");
    assertThat(
            open(
                List.of(
                    new Regime(Standard.OTHER, Fact.missing(), Fact.missing(), "town rule 12"))))
        .contains("town rule 12, whose figures are not held");
  }

  private static String open(List<Regime> regimes) {
    BatteryDuties.Found found = BatteryDuties.of(regimes, supply(false));
    assertThat(found.duties()).isEmpty();
    assertThat(found.notAssessed()).hasSize(1);
    MissingFact missing = found.notAssessed().getFirst();
    assertThat(missing.message()).startsWith("not assessed: ");
    return missing.message();
  }

  private static double published(int grade, String item) {
    for (CSVRecord row : ReferenceRows.of("standby_duties.csv")) {
      if (row.get("grade_or_class").equals(Integer.toString(grade))
          && row.get("item").equals(item)) {
        return Double.parseDouble(row.get("value"));
      }
    }
    throw new AssertionError("no row for grade " + grade + ", " + item);
  }

  private static BatteryDuty only(BatteryDuties.Found found) {
    assertThat(found.notAssessed()).isEmpty();
    assertThat(found.duties()).hasSize(1);
    return found.duties().getFirst();
  }

  private static Regime en50131(int grade) {
    return new Regime(Standard.EN50131, Fact.missing(), Fact.of(grade), "en50131");
  }

  private static Regime of(Standard standard) {
    return new Regime(standard, Fact.missing(), Fact.missing(), standard.word());
  }

  private static Supply supply(boolean signals) {
    return PlanBuilder.site()
        .supply("Main", main -> main.signalsMainsFailure(signals))
        .build()
        .supplies()
        .getFirst();
  }
}
