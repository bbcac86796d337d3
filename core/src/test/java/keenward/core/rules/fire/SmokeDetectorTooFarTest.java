package keenward.core.rules.fire;

import static keenward.core.plan.DeviceKind.SMOKE;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.RoomUse.BEDROOM;
import static keenward.core.plan.RoomUse.LANDING;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Standard;
import org.junit.jupiter.api.Test;

class SmokeDetectorTooFarTest {

  private final SmokeDetectorTooFar rule = new SmokeDetectorTooFar();

  /** The door of the bedroom is at x 9.05 m on the edge y 2 m of a corridor. */
  private static PlanBuilder corridor(double smokeX) {
    return corridor().device("Smoke", SMOKE, device -> device.room("Corridor").at(smokeX, 1.7));
  }

  private static PlanBuilder corridor() {
    return PlanBuilder.site()
        .regime(Standard.NFPA72_HOUSEHOLD)
        .floor(
            "Upper",
            floor ->
                floor
                    .room("Corridor", LANDING, 0, 0, 12, 2)
                    .room("Bedroom", BEDROOM, 8, 2, 12, 6)
                    .opening("Bedroom door", DOOR, "Bedroom", "Corridor", 1))
        .zone(1, "Smoke", FIRE, zone -> zone.device("Smoke"));
  }

  /** 21 ft are 6.4 m: NFPA 72 (2010) chapter 29, read in a trade article. */
  @Test
  void measuresFromTheDoorAlongTheWay() {
    assertThat(findings(rule, corridor(2.8))).isEmpty();
    assertThat(findings(rule, corridor(2.4)))
        .containsExactly(
            "error at floors / Upper / rooms / Bedroom: From 'Bedroom door', the door of bedroom"
                + " 'Bedroom', it is 6.6 m to the nearest smoke detector outside, 'Smoke'; at most 6.4 m"
                + " (21 ft) is asked for.");
  }

  @Test
  void doesNotAssessADetectorWithoutAPlace() {
    PlanBuilder plan = corridor().device("Smoke", SMOKE, device -> device.room("Corridor"));

    assertThat(run(rule, plan).judgedCount()).isZero();
    assertThat(notAssessed(rule, plan))
        .containsExactly(
            "floors / Upper / rooms / Bedroom: how far it is from the door of 'Bedroom' to a smoke"
                + " detector, since the plan does not say where 'Smoke' is; add: at: [1.9, 2]");
  }
}
