package keenward.core.rules.responses;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.DeviceKind.SHOCK;
import static keenward.core.plan.DeviceKind.SMOKE;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.plan.ZoneResponse.TWENTY_FOUR_HOUR;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnsuitableResponseTest {

  private final UnsuitableResponse rule = new UnsuitableResponse();

  @Test
  void findsAMotionDetectorThatIsLiveDayAndNight() {
    PlanBuilder plan =
        PlanBuilder.site().zone(7, "Changing", TWENTY_FOUR_HOUR, zone -> zone.kind(MOTION));

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at zones / 7 / response: Zone 7 'Changing' has response 24-hour on a device of"
                + " kind motion, where follower, instant or perimeter is usual, and the plan gives no"
                + " reason.");
  }

  @Test
  void findsASmokeDetectorThatSleepsWhileDisarmed() {
    PlanBuilder plan = PlanBuilder.site().zone(3, "Smoke", INSTANT, zone -> zone.kind(SMOKE));

    assertThat(findings(rule, plan))
        .singleElement()
        .asString()
        .startsWith("error at zones / 3 / response: Zone 3 'Smoke' has response instant");
  }

  @Test
  void takesAReasonForADoubtfulChoiceAndDoubtsAWrongOne() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "Safe", TWENTY_FOUR_HOUR, zone -> zone.kind(SHOCK).reason("never moved"))
            .zone(2, "Smoke", PERIMETER, zone -> zone.kind(SMOKE).reason("smoke-cloak trigger"));

    assertThat(findings(rule, plan))
        .singleElement()
        .asString()
        .startsWith("warning at zones / 2")
        .endsWith("where fire is usual; the reason given is 'smoke-cloak trigger'.");
  }

  @Test
  void leavesFurtherInputsAlone() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Contact", CONTACT, device -> device.inputs("contact", "terminals"))
            .zone(1, "Flood", TWENTY_FOUR_HOUR, zone -> zone.device("Contact", "terminals"));

    assertThat(run(rule, plan).judgedCount()).isZero();
    assertThat(findings(rule, plan)).isEmpty();
  }

  @Test
  void doesNotAssessZonesWithoutADevice() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "Door", ENTRY_EXIT)
            .zone(2, "Hall", INSTANT)
            .zone(3, "Side", ENTRY_EXIT, zone -> zone.kind(CONTACT));

    assertThat(notAssessed(rule, plan))
        .containsExactly(
            "zones / 1: whether the response suits the device, since the plan names no device of zones"
                + " 1 'Door' and 2 'Hall'; add: device: contact");
  }

  @ParameterizedTest
  @EnumSource(DeviceKind.class)
  void knowsAUsualResponseForEveryKind(DeviceKind kind) {
    assertThat(SuitableResponses.usual(kind)).isNotEmpty();
  }
}
