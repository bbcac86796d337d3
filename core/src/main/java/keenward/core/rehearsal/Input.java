package keenward.core.rehearsal;

import keenward.core.plan.ArmingMode;

/**
 * Something that happens to the system. Indexes are those of the {@link SystemModel}; where a user
 * or keypad is not stated it is {@link SystemModel#NONE}.
 */
public sealed interface Input {

  /**
   * Time passes; every deadline up to and including its end is met.
   *
   * @param tenths how long, in tenths of a second
   */
  record Advance(int tenths) implements Input {
    public Advance {
      if (tenths < 0) {
        throw new IllegalArgumentException("time does not run backwards");
      }
    }
  }

  /**
   * A zone is violated: its door opens, its detector sees, its button is pressed.
   *
   * @param zone index of the zone
   */
  record ZoneOpened(int zone) implements Input {}

  /**
   * A zone is at rest again.
   *
   * @param zone index of the zone
   */
  record ZoneClosed(int zone) implements Input {}

  /**
   * The lid of a zone's device is opened.
   *
   * @param zone index of the zone
   */
  record LidOpened(int zone) implements Input {}

  /**
   * The lid of a zone's device is shut.
   *
   * @param zone index of the zone
   */
  record LidShut(int zone) implements Input {}

  /**
   * A radio device falls silent.
   *
   * @param zone index of the zone
   */
  record RadioLost(int zone) implements Input {}

  /**
   * A radio device is heard.
   *
   * @param zone index of the zone
   */
  record RadioHeard(int zone) implements Input {}

  /**
   * The cell of a radio device is low, or good again.
   *
   * @param zone index of the zone
   * @param low whether it is low
   */
  record Cell(int zone, boolean low) implements Input {}

  /**
   * A right code, and nothing else.
   *
   * @param user index of its owner
   * @param keypad index of the keypad
   */
  record Code(int user, int keypad) implements Input {}

  /**
   * A code that nobody has.
   *
   * @param keypad index of the keypad
   */
  record WrongCode(int keypad) implements Input {}

  /**
   * Somebody arms.
   *
   * @param user index of the user
   * @param keypad index of the keypad
   * @param partition index of the partition; none means all that keypad and user share
   * @param mode how
   * @param forced whether to leave open zones out where that is allowed
   */
  record Arm(int user, int keypad, int partition, ArmingMode mode, boolean forced)
      implements Input {}

  /**
   * Somebody disarms or silences.
   *
   * @param user index of the user
   * @param keypad index of the keypad
   * @param partition index of the partition; none means all that keypad and user share
   */
  record Disarm(int user, int keypad, int partition) implements Input {}

  /**
   * Somebody leaves a zone out until the next disarming.
   *
   * @param user index of the user
   * @param keypad index of the keypad
   * @param zone index of the zone
   */
  record Bypass(int user, int keypad, int zone) implements Input {}

  /**
   * Somebody takes a bypassed zone back in.
   *
   * @param user index of the user
   * @param keypad index of the keypad
   * @param zone index of the zone
   */
  record EndBypass(int user, int keypad, int zone) implements Input {}

  /**
   * A technician takes a zone out of service, or back in.
   *
   * @param user index of the user
   * @param zone index of the zone
   * @param out whether it is taken out
   */
  record Isolate(int user, int zone, boolean out) implements Input {}

  /**
   * Somebody resets detectors and tampers.
   *
   * @param user index of the user
   * @param keypad index of the keypad
   */
  record Reset(int user, int keypad) implements Input {}

  /**
   * Somebody puts automatic arming off.
   *
   * @param user index of the user
   * @param keypad index of the keypad
   * @param tenths for how long, in tenths of a second
   */
  record PostponeArming(int user, int keypad, int tenths) implements Input {
    public PostponeArming {
      if (tenths < 0) {
        throw new IllegalArgumentException("arming is not put off backwards");
      }
    }
  }

  /**
   * The clock of the system is set.
   *
   * @param tenths by how much it goes forward, in tenths of a second; negative when it goes back
   */
  record ClockSet(int tenths) implements Input {
    private static final int DAY_TENTHS = 864_000;

    public ClockSet {
      if (tenths <= -DAY_TENTHS || tenths >= DAY_TENTHS) {
        throw new IllegalArgumentException("the clock is set by less than a day");
      }
    }
  }

  /**
   * Mains fails or comes back.
   *
   * @param present whether it is there
   */
  record Mains(boolean present) implements Input {}

  /**
   * The standby battery becomes low, or good again.
   *
   * @param low whether it is low
   */
  record Battery(boolean low) implements Input {}

  /**
   * Programming is opened or left.
   *
   * @param open whether it is opened
   */
  record Programming(boolean open) implements Input {}

  /** The panel loses all power and starts again. */
  record Restart() implements Input {}
}
