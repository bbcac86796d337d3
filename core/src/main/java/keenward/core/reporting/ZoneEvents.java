package keenward.core.reporting;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Floor;
import keenward.core.plan.Room;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;

/**
 * The event code of a zone: the one its plan states, otherwise the one of DC-05 (1999.09) whose
 * meaning names the response and the kind of device. Which meaning is usual for which response is
 * common practice, no source; the monitoring centre may want another.
 */
public final class ZoneEvents {
  private static final int MEDICAL = 100;
  private static final int FIRE = 110;
  private static final int SMOKE = 111;
  private static final int HEAT = 114;
  private static final int CALL_POINT = 115;
  private static final int SILENT_PANIC = 122;
  private static final int AUDIBLE_PANIC = 123;
  private static final int BURGLARY = 130;
  private static final int PERIMETER = 131;
  private static final int INTERIOR = 132;
  private static final int TWENTY_FOUR_HOUR = 133;
  private static final int ENTRY_EXIT = 134;
  private static final int TAMPER = 137;
  private static final int NOT_BURGLARY = 150;
  private static final int WATER_LEAK = 154;
  private static final int TEMPERATURE_HIGH = 158;
  private static final int CARBON_MONOXIDE = 162;
  private static final int KEY_SWITCH = 409;

  private ZoneEvents() {}

  /** The event code of a zone of a plan. */
  public static ZoneEvent of(SitePlan plan, Zone zone) {
    return zone.event()
        .find()
        .map(code -> new ZoneEvent(code, "stated in the plan"))
        .orElseGet(() -> usual(plan, zone));
  }

  /** The usual code for a response and, where it matters, the kind of device and its silence. */
  public static int usual(ZoneResponse response, Optional<DeviceKind> kind, boolean silent) {
    return switch (response) {
      case ENTRY_EXIT -> ENTRY_EXIT;
      case FOLLOWER -> INTERIOR;
      case PERIMETER -> PERIMETER;
      case INSTANT -> kind.map(ZoneEvents::instant).orElse(BURGLARY);
      case TWENTY_FOUR_HOUR -> TWENTY_FOUR_HOUR;
      case HOLD_UP -> silent ? SILENT_PANIC : AUDIBLE_PANIC;
      case FIRE -> kind.map(ZoneEvents::fire).orElse(FIRE);
      case CARBON_MONOXIDE -> CARBON_MONOXIDE;
      case MEDICAL -> MEDICAL;
      case TAMPER -> TAMPER;
      case TECHNICAL ->
          kind.filter(DeviceKind.WATER::equals).map(water -> WATER_LEAK).orElse(NOT_BURGLARY);
      case KEY_SWITCH -> KEY_SWITCH;
    };
  }

  private static ZoneEvent usual(SitePlan plan, Zone zone) {
    boolean silent = zone.silent().orElse(zone.response() == ZoneResponse.HOLD_UP);
    if (zone.response() == ZoneResponse.TECHNICAL && watchesColdStore(plan, zone)) {
      return new ZoneEvent(TEMPERATURE_HIGH, "usual for a temperature sensor of a cold store");
    }
    List<Integer> codes =
        zone.devices().stream()
            .map(device -> usual(zone.response(), Optional.of(device.kind()), silent))
            .distinct()
            .toList();
    String response = "usual for response " + zone.response().word();
    // Unlike devices on one zone: the centre cannot tell which one it was, so neither may the code.
    if (codes.size() != 1) {
      return new ZoneEvent(usual(zone.response(), Optional.empty(), silent), response);
    }
    int general = usual(zone.response(), Optional.empty(), silent);
    return new ZoneEvent(
        codes.getFirst(),
        codes.getFirst() == general
            ? response
            : response + " and device " + zone.devices().getFirst().kind().word());
  }

  private static int instant(DeviceKind kind) {
    return switch (kind) {
      case MOTION, DUAL_MOTION -> INTERIOR;
      case CONTACT, GLASS_BREAK, SHOCK, CURTAIN -> PERIMETER;
      default -> BURGLARY;
    };
  }

  private static int fire(DeviceKind kind) {
    return switch (kind) {
      case SMOKE -> SMOKE;
      case HEAT -> HEAT;
      case CALL_POINT -> CALL_POINT;
      default -> FIRE;
    };
  }

  private static boolean watchesColdStore(SitePlan plan, Zone zone) {
    return !zone.devices().isEmpty()
        && zone.devices().stream()
            .allMatch(each ->
                each instanceof ZoneDevice.Fitted fitted
                    && fitted.kind() == DeviceKind.TEMPERATURE
                    && isInColdStore(plan, fitted.device()));
  }

  private static boolean isInColdStore(SitePlan plan, Device device) {
    return device
        .room()
        .find()
        .flatMap(room -> plan.findFloorOfRoom(room).flatMap(floor -> findRoom(floor, room)))
        .flatMap(room -> room.use().find())
        .filter(RoomUse.COLD_STORE::equals)
        .isPresent();
  }

  private static Optional<Room> findRoom(Floor floor, String name) {
    return floor.rooms().stream().filter(room -> room.name().equals(name)).findFirst();
  }
}
