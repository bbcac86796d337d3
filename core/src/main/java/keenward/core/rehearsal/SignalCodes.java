package keenward.core.rehearsal;

/**
 * The DC-05 event codes of what the system itself reports; a zone's alarm carries the zone's own
 * code.
 */
final class SignalCodes {

  static final int DURESS = 121;
  static final int SENSOR_TAMPER_ALARM = 144;
  static final int RADIO_LOST_ALARM = 147;
  static final int MAINS_LOST = 301;
  static final int BATTERY_LOW = 302;
  static final int RESTARTED = 305;
  static final int EXIT_ERROR = 374;
  static final int CROSS_ZONE_ALONE = 378;
  static final int RADIO_LOST = 381;
  static final int SENSOR_TAMPER = 383;
  static final int CELL_LOW = 384;
  static final int BY_USER = 401;
  static final int AUTOMATIC = 403;
  static final int CANCEL = 406;
  static final int REMOTE = 407;
  static final int KEY_SWITCH = 409;
  static final int STAY_BY_USER = 441;
  static final int AUTOMATIC_ARMING_FAILED = 455;
  static final int RECENT_CLOSING = 459;
  static final int WRONG_CODE = 461;
  static final int BYPASS = 570;
  static final int FIRE_BYPASS = 571;
  static final int TWENTY_FOUR_HOUR_BYPASS = 572;
  static final int BURGLARY_BYPASS = 573;
  static final int SWINGER_SHUT_OUT = 575;
  static final int PROGRAMMING_ENTERED = 627;
  static final int PROGRAMMING_LEFT = 628;

  /** DC-05 qualifier of a new event or an opening. */
  static final int NEW = 1;

  /** DC-05 qualifier of a restore or a closing. */
  static final int RESTORE = 3;

  private SignalCodes() {}
}
