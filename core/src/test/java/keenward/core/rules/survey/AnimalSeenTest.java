package keenward.core.rules.survey;

import static keenward.core.plan.CoveragePattern.FAN;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class AnimalSeenTest {

  private final AnimalSeen rule = new AnimalSeen();

  /** A hall below a store with an animal. */
  private static PlanBuilder site(String room, Consumer<DeviceBuilder> details) {
    return PlanBuilder.site()
        .floor("Ground", floor -> floor.room("Hall", HALL, 0, 0, 8, 6))
        .floor("Upper", floor -> floor.room("Store", STORE, 0, 0, 8, 6).animals("Store"))
        .device("Eye", MOTION, device -> details.accept(device.room(room)))
        .zone(1, "Eye", INSTANT, zone -> zone.device("Eye"));
  }

  @Test
  void doesNotSeeThroughTheCeiling() {
    Consumer<DeviceBuilder> drawn =
        eye ->
            eye.at(0.1, 0.1)
                .mountedAt("2.2 m")
                .bearing("45 deg")
                .covers(FAN, "12 m", "90 deg")
                .petAllowance(false);
    assertThat(findings(rule, site("Hall", drawn))).isEmpty();
    assertThat(findings(rule, site("Store", drawn))).hasSize(1);
  }

  @Test
  void takesADetectorOfUnknownSightToSeeItsRoom() {
    Consumer<DeviceBuilder> bare = eye -> eye.covers(FAN, "12 m", "90 deg").petAllowance(false);
    assertThat(findings(rule, site("Hall", bare))).isEmpty();
    assertThat(findings(rule, site("Store", bare)))
        .containsExactly(
            "warning at devices / Eye: 'Eye' has no pet allowance and sees floor of 'Store', where an"
                + " animal moves about.");
  }

  @Test
  void asksForThePetAllowance() {
    assertThat(findings(rule, site("Store", eye -> {}))).isEmpty();
    assertThat(notAssessed(rule, site("Store", eye -> {})))
        .singleElement()
        .asString()
        .contains("minds the animal in 'Store'");
  }
}
