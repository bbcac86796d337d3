package keenward.core.rehearsal;

import keenward.core.plan.ArmingMode;

/** Arming modes as numbers in a {@link State}; 0 is disarmed. */
final class Modes {

  static final int AWAY = 1;
  static final int STAY = 2;
  static final int NIGHT = 3;

  private Modes() {}

  static int number(ArmingMode mode) {
    return switch (mode) {
      case AWAY -> AWAY;
      case STAY -> STAY;
      case NIGHT -> NIGHT;
    };
  }

  static ArmingMode mode(int number) {
    return switch (number) {
      case AWAY -> ArmingMode.AWAY;
      case STAY -> ArmingMode.STAY;
      case NIGHT -> ArmingMode.NIGHT;
      default -> throw new IllegalArgumentException("no mode has number " + number);
    };
  }
}
