package keenward.core.rules.responses;

import static keenward.core.plan.ZoneResponse.CARBON_MONOXIDE;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.plan.ZoneResponse.FOLLOWER;
import static keenward.core.plan.ZoneResponse.HOLD_UP;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.plan.ZoneResponse.KEY_SWITCH;
import static keenward.core.plan.ZoneResponse.MEDICAL;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.plan.ZoneResponse.TAMPER;
import static keenward.core.plan.ZoneResponse.TECHNICAL;
import static keenward.core.plan.ZoneResponse.TWENTY_FOUR_HOUR;

import java.util.List;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.ZoneResponse;

/** Which responses suit which kind of device; common practice, no source. */
final class SuitableResponses {

  /** How a response suits a kind of device. */
  enum Fit {
    /** As usual. */
    USUAL,
    /** Only where there is a reason for it. */
    WITH_REASON,
    /** Not what the device is for. */
    WRONG
  }

  private SuitableResponses() {}

  /** The responses that are usual for a kind of device. */
  static List<ZoneResponse> usual(DeviceKind kind) {
    return switch (kind) {
      case CONTACT, BEAM, CURTAIN -> List.of(ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT);
      case MOTION, DUAL_MOTION -> List.of(FOLLOWER, INSTANT, PERIMETER);
      case GLASS_BREAK, SHOCK -> List.of(PERIMETER, INSTANT);
      case SMOKE, HEAT, CALL_POINT -> List.of(FIRE);
      case CARBON_MONOXIDE_DETECTOR -> List.of(CARBON_MONOXIDE);
      case HOLD_UP_BUTTON -> List.of(HOLD_UP);
      case MEDICAL_BUTTON -> List.of(MEDICAL);
      case TEMPERATURE, WATER -> List.of(TECHNICAL);
      case KEY_SWITCH_CONTACT -> List.of(KEY_SWITCH);
      case FOB -> List.of(HOLD_UP, MEDICAL, KEY_SWITCH);
      case KEYPAD -> List.of(TAMPER, HOLD_UP, MEDICAL, FIRE);
      case EXPANDER, COMMUNICATOR, RECEIVER, REPEATER, RELAY -> List.of(TAMPER, TECHNICAL);
      case LID, SOUNDER, SIREN, STROBE -> List.of(TAMPER);
    };
  }

  /** How a response suits a kind of device. */
  static Fit fit(DeviceKind kind, ZoneResponse response) {
    if (usual(kind).contains(response)) {
      return Fit.USUAL;
    }
    return withReason(kind).contains(response) ? Fit.WITH_REASON : Fit.WRONG;
  }

  private static List<ZoneResponse> withReason(DeviceKind kind) {
    return switch (kind) {
      case CONTACT -> List.of(TWENTY_FOUR_HOUR, TECHNICAL, TAMPER, KEY_SWITCH);
      case MOTION, DUAL_MOTION -> List.of(ENTRY_EXIT, TWENTY_FOUR_HOUR);
      case CURTAIN, BEAM -> List.of(TWENTY_FOUR_HOUR);
      case GLASS_BREAK, SHOCK -> List.of(TWENTY_FOUR_HOUR, FOLLOWER, TAMPER);
      case HOLD_UP_BUTTON -> List.of(MEDICAL);
      case MEDICAL_BUTTON -> List.of(HOLD_UP);
      case TEMPERATURE, WATER, LID -> List.of(TWENTY_FOUR_HOUR);
      default -> List.of();
    };
  }
}
