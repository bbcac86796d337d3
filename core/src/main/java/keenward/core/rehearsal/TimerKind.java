package keenward.core.rehearsal;

/** What runs out. Deadlines of the same instant are met in this order. */
enum TimerKind {
  START_UP,
  HOLD,
  EXIT,
  ENTRY,
  CROSS_WINDOW,
  VERIFICATION,
  ABORT,
  BURGLARY_TONE,
  FIRE_TONE,
  GAS_TONE,
  MEDICAL_TONE,
  GAS_REPEAT,
  RECENT_CLOSING,
  CANCEL,
  SWINGER_RESET,
  SUPERVISION,
  MAINS_REPORT,
  BATTERY_TEST,
  LOCK_OUT,
  ARMING_WARNING,
  AUTOMATIC_ARMING
}
