package keenward.core.rules.fire;

import static keenward.core.plan.ArmingMode.AWAY;
import static keenward.core.plan.ZoneResponse.CARBON_MONOXIDE;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class LifeSafetyZoneWeakenedTest {

  private final LifeSafetyZoneWeakened rule = new LifeSafetyZoneWeakened();

  @Test
  void findsAFireZoneThatAUserMayBypass() {
    PlanBuilder plan =
        PlanBuilder.site().zone(11, "Club smoke", FIRE, zone -> zone.mayBypass(true));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 11 / bypass: Zone 11 'Club smoke' has response fire and may be bypassed by a user.");
  }

  @Test
  void findsEveryOtherWeakeningOnItsOwnLine() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(
                1,
                "Gas",
                CARBON_MONOXIDE,
                zone -> zone.mayForceArm(true).silent(true).liveIn(AWAY));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 1 / force arm: Zone 1 'Gas' has response carbon-monoxide and may be armed over"
                + " while it is open.",
            "error at zones / 1 / silent: Zone 1 'Gas' has response carbon-monoxide and is silent on site.",
            "error at zones / 1 / live in: Zone 1 'Gas' has response carbon-monoxide and is not live in stay"
                + " and night.");
  }

  @Test
  void passesTheSameOptionsSwitchedOffAndOnABurglaryZone() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "Smoke", FIRE, zone -> zone.mayBypass(false).silent(false))
            .zone(2, "Window", PERIMETER, zone -> zone.mayBypass(true));

    assertThat(findings(rule, plan)).isEmpty();
  }
}
