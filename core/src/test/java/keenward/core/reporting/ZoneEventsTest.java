package keenward.core.reporting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.Consumer;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneBuilder;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;

/**
 * Codes by their meaning in DC-05 (1999.09); which response uses which is common practice, no
 * source.
 */
class ZoneEventsTest {
  @Test
  void everyResponseHasACodeThatMayBeSent() {
    for (ZoneResponse response : ZoneResponse.values()) {
      for (DeviceKind kind : DeviceKind.values()) {
        int code = ZoneEvents.usual(response, Optional.of(kind), false);
        assertThat(EventCodes.get(code).standing())
            .as("%s %s", response, kind)
            .isEqualTo(Standing.USUAL);
      }
    }
  }

  @Test
  void meaningsNameTheResponse() {
    assertThat(meaning(ZoneResponse.ENTRY_EXIT)).isEqualTo("entry/exit zone");
    assertThat(meaning(ZoneResponse.FOLLOWER)).isEqualTo("interior zone");
    assertThat(meaning(ZoneResponse.PERIMETER)).isEqualTo("perimeter zone");
    assertThat(meaning(ZoneResponse.TWENTY_FOUR_HOUR)).isEqualTo("24-hour (safe) zone");
    assertThat(meaning(ZoneResponse.CARBON_MONOXIDE)).isEqualTo("carbon monoxide");
    assertThat(meaning(ZoneResponse.TAMPER)).isEqualTo("burglary tamper");
    assertThat(meaning(ZoneResponse.KEY_SWITCH)).isEqualTo("key switch disarm/arm");
  }

  @Test
  void holdUpIsSilentUnlessThePlanSaysOtherwise() {
    assertThat(code(ZoneResponse.HOLD_UP, zone -> {})).isEqualTo(122);
    assertThat(code(ZoneResponse.HOLD_UP, zone -> zone.silent(false))).isEqualTo(123);
  }

  @Test
  void theDeviceDecidesWhereItsMeaningIsNearer() {
    assertThat(code(ZoneResponse.FIRE, zone -> zone.kind(DeviceKind.SMOKE))).isEqualTo(111);
    assertThat(code(ZoneResponse.FIRE, zone -> zone.kind(DeviceKind.CALL_POINT))).isEqualTo(115);
    assertThat(code(ZoneResponse.FIRE, zone -> {})).isEqualTo(110);
    assertThat(code(ZoneResponse.INSTANT, zone -> zone.kind(DeviceKind.MOTION))).isEqualTo(132);
    assertThat(code(ZoneResponse.INSTANT, zone -> zone.kind(DeviceKind.CONTACT))).isEqualTo(131);
    assertThat(code(ZoneResponse.TECHNICAL, zone -> zone.kind(DeviceKind.WATER))).isEqualTo(154);
  }

  @Test
  void unlikeDevicesOnOneZoneReportTheGeneralCode() {
    assertThat(code(ZoneResponse.FIRE, zone -> zone.kind(DeviceKind.SMOKE).kind(DeviceKind.HEAT)))
        .isEqualTo(110);
  }

  @Test
  void theReasonNamesTheDeviceOnlyWhereItDecides() {
    assertThat(reason(ZoneResponse.FIRE, zone -> zone.kind(DeviceKind.SMOKE)))
        .isEqualTo("usual for response fire and device smoke");
    assertThat(reason(ZoneResponse.PERIMETER, zone -> zone.kind(DeviceKind.CONTACT)))
        .isEqualTo("usual for response perimeter");
  }

  @Test
  void thePlansOwnCodeRules() {
    SitePlan plan =
        PlanBuilder.site()
            .zone(1, "Fence", ZoneResponse.PERIMETER, zone -> zone.event(136))
            .build();
    assertThat(ZoneEvents.of(plan, plan.zones().getFirst()))
        .isEqualTo(new ZoneEvent(136, "stated in the plan"));
  }

  @Test
  void aTemperatureSensorInAColdStoreReportsHighTemperature() {
    SitePlan plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Hall", RoomUse.HALL, 2, 0, 4, 3)
                        .room("Cold store", RoomUse.COLD_STORE, 0, 0, 2, 3))
            .device("Probe", DeviceKind.TEMPERATURE, probe -> probe.room("Cold store"))
            .device("Hall probe", DeviceKind.TEMPERATURE, probe -> probe.room("Hall"))
            .zone(1, "Cold", ZoneResponse.TECHNICAL, zone -> zone.device("Probe"))
            .zone(2, "Hall", ZoneResponse.TECHNICAL, zone -> zone.device("Hall probe"))
            .build();
    assertThat(ZoneEvents.of(plan, plan.zones().get(0)).code()).isEqualTo(158);
    assertThat(ZoneEvents.of(plan, plan.zones().get(1)).code()).isEqualTo(150);
  }

  private static String meaning(ZoneResponse response) {
    return EventCodes.meaning(ZoneEvents.usual(response, Optional.empty(), false));
  }

  private static String reason(ZoneResponse response, Consumer<ZoneBuilder> details) {
    SitePlan plan = PlanBuilder.site().zone(1, "Zone", response, details).build();
    return ZoneEvents.of(plan, plan.zones().getFirst()).reason();
  }

  private static int code(ZoneResponse response, Consumer<ZoneBuilder> details) {
    SitePlan plan = PlanBuilder.site().zone(1, "Zone", response, details).build();
    return ZoneEvents.of(plan, plan.zones().getFirst()).code();
  }
}
