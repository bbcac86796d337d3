package keenward.core.rehearsal;

import keenward.core.plan.ArmingMode;

/**
 * How long after its violation a zone waits for a code, by arming mode; 0 means not at all.
 *
 * @param awayTenths entry delay when armed away, in tenths of a second
 * @param stayTenths entry delay when armed stay, in tenths of a second
 * @param nightTenths entry delay when armed for the night, in tenths of a second
 */
public record EntryDelays(int awayTenths, int stayTenths, int nightTenths) {

  /** No delay in any mode. */
  public static final EntryDelays NONE = new EntryDelays(0, 0, 0);

  public EntryDelays {
    if (awayTenths < 0 || stayTenths < 0 || nightTenths < 0) {
      throw new IllegalArgumentException("an entry delay is not negative");
    }
  }

  /** The same delay in every mode. */
  public static EntryDelays always(int tenths) {
    return new EntryDelays(tenths, tenths, tenths);
  }

  /** The delay in one mode, in tenths of a second. */
  public int in(ArmingMode mode) {
    return switch (mode) {
      case AWAY -> awayTenths;
      case STAY -> stayTenths;
      case NIGHT -> nightTenths;
    };
  }
}
