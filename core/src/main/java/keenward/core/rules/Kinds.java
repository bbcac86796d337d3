package keenward.core.rules;

import keenward.core.plan.DeviceKind;
import keenward.core.plan.ZoneResponse;

/** What the kinds and responses of a plan have in common, where several rules need it. */
public final class Kinds {

  private Kinds() {}

  /** Whether a device is something that a zone watches. */
  public static boolean isDetector(DeviceKind kind) {
    return switch (kind) {
      case CONTACT,
          MOTION,
          DUAL_MOTION,
          CURTAIN,
          BEAM,
          GLASS_BREAK,
          SHOCK,
          SMOKE,
          HEAT,
          CARBON_MONOXIDE_DETECTOR,
          CALL_POINT,
          HOLD_UP_BUTTON,
          MEDICAL_BUTTON,
          TEMPERATURE,
          WATER,
          LID,
          KEY_SWITCH_CONTACT ->
          true;
      case KEYPAD, FOB, SOUNDER, SIREN, STROBE, EXPANDER, RECEIVER, REPEATER, COMMUNICATOR, RELAY ->
          false;
    };
  }

  /** Whether a device detects burglars, and so has a security grade. */
  public static boolean isIntruderDetector(DeviceKind kind) {
    return switch (kind) {
      case CONTACT, MOTION, DUAL_MOTION, CURTAIN, BEAM, GLASS_BREAK, SHOCK -> true;
      default -> false;
    };
  }

  /** Whether a device sees somebody who moves about a room. */
  public static boolean isRoomMotion(DeviceKind kind) {
    return kind == DeviceKind.MOTION || kind == DeviceKind.DUAL_MOTION;
  }

  /** Whether a zone guards against burglars and is armed and disarmed, not always live. */
  public static boolean isArmedBurglary(ZoneResponse response) {
    return switch (response) {
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT -> true;
      default -> false;
    };
  }

  /** Whether a zone guards against burglars at all. */
  public static boolean isBurglary(ZoneResponse response) {
    return isArmedBurglary(response) || response == ZoneResponse.TWENTY_FOUR_HOUR;
  }

  /** Whether a zone warns of fire or carbon monoxide. */
  public static boolean isLifeSafety(ZoneResponse response) {
    return response == ZoneResponse.FIRE || response == ZoneResponse.CARBON_MONOXIDE;
  }
}
