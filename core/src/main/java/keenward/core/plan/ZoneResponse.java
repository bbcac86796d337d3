package keenward.core.plan;

import java.util.List;

/**
 * What the system does when a zone is violated. Trade terms; the behaviour is in
 * docs/methods/rehearsal.md.
 */
public enum ZoneResponse implements Worded {
  /**
   * Starts the entry delay when armed; watched for leaving during exit time. Live in away and stay.
   */
  ENTRY_EXIT("entry-exit"),
  /**
   * Interior zone on the way in: waits while an entry delay runs, alarms at once otherwise. Live in
   * away.
   */
  FOLLOWER("follower"),
  /** Alarms at once when armed. Live in away, stay and night. */
  PERIMETER("perimeter"),
  /** Alarms at once when armed. Live in away. */
  INSTANT("instant"),
  /** Alarms at once, armed or not. */
  TWENTY_FOUR_HOUR("24-hour"),
  /** A person asks for help under threat; silent unless the zone says otherwise. Always live. */
  HOLD_UP("hold-up"),
  /** Fire alarm. Always live, never bypassed, never delayed by the abort window. */
  FIRE("fire"),
  /** Carbon monoxide alarm. Always live, never bypassed. */
  CARBON_MONOXIDE("carbon-monoxide"),
  /** A person asks for medical help. Always live. */
  MEDICAL("medical"),
  /** A lid or cable is interfered with: trouble when disarmed, alarm when armed. Always live. */
  TAMPER("tamper"),
  /**
   * Watches a plant, such as a cold store or a pump: signal and display, no burglary sounder.
   * Always live.
   */
  TECHNICAL("technical"),
  /** Arms or disarms its partitions. */
  KEY_SWITCH("key-switch");

  private final String word;

  ZoneResponse(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** The arming modes in which such a zone is live, where the plan says nothing. */
  public List<ArmingMode> usualModes() {
    return switch (this) {
      case ENTRY_EXIT, PERIMETER -> List.of(ArmingMode.AWAY, ArmingMode.STAY, ArmingMode.NIGHT);
      case FOLLOWER, INSTANT -> List.of(ArmingMode.AWAY);
      default -> List.of(ArmingMode.values());
    };
  }

  /** Whether it is live armed or not. */
  public boolean isAlwaysLive() {
    return switch (this) {
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT, KEY_SWITCH -> false;
      default -> true;
    };
  }
}
