package keenward.core.rehearsal;

/**
 * What a keypad shows or a log holds, in words of our own. {@code {subject}} and {@code {time}} are
 * filled in.
 */
public enum Notice {
  LEAVE_NOW(Subject.PARTITION, "{subject}: leave within {time}"),
  ARMED_AWAY(Subject.PARTITION, "{subject}: armed away"),
  ARMED_STAY(Subject.PARTITION, "{subject}: armed stay"),
  ARMED_NIGHT(Subject.PARTITION, "{subject}: armed for the night"),
  DISARM_NOW(Subject.PARTITION, "{subject}: disarm within {time}"),
  DISARMED(Subject.PARTITION, "{subject}: disarmed"),
  CLOSE_DOOR(Subject.ZONE, "{subject} is still open: close it or disarm"),
  ALARM(Subject.ZONE, "alarm: {subject}"),
  TROUBLE(Subject.ZONE, "look at: {subject}"),
  TAMPER(Subject.ZONE, "tamper: {subject}"),
  LOOKING_AGAIN(Subject.ZONE, "smoke at {subject}: looking again"),
  DETECTOR_RESET(Subject.ZONE, "detector reset: {subject}"),
  STILL_ACTIVE(Subject.ZONE, "still active: {subject}"),
  LEFT_OUT(Subject.ZONE, "left out: {subject}"),
  BACK_IN(Subject.ZONE, "watched again: {subject}"),
  REPORT_WAITS(Subject.ZONE, "report of {subject} waits {time}"),
  ALARM_STOPPED(Subject.PARTITION, "{subject}: alarm was not sent"),
  CANCEL_SENT(Subject.PARTITION, "{subject}: alarm was sent; cancel sent"),
  SILENCED(Subject.PARTITION, "{subject}: silenced"),
  READY(Subject.PARTITION, "{subject}: ready"),
  NOT_READY(Subject.ZONE, "open: {subject}"),
  SHUT_OUT(Subject.ZONE, "shut out: {subject}"),
  SEEN_ALONE(Subject.ZONE, "unconfirmed: {subject}"),
  MISSING(Subject.ZONE, "not heard: {subject}"),
  HEARD_AGAIN(Subject.ZONE, "heard again: {subject}"),
  CELL_LOW(Subject.ZONE, "cell low: {subject}"),
  MAINS_ABSENT(Subject.SYSTEM, "mains absent"),
  MAINS_BACK(Subject.SYSTEM, "mains back"),
  BATTERY_LOW(Subject.SYSTEM, "battery low"),
  BATTERY_GOOD(Subject.SYSTEM, "battery good"),
  PROGRAMMING_OPEN(Subject.SYSTEM, "programming open: zones are not watched"),
  PROGRAMMING_LEFT(Subject.SYSTEM, "programming left"),
  STARTING_UP(Subject.SYSTEM, "starting up: zones are not watched for {time}"),
  STARTED(Subject.SYSTEM, "zones are watched"),
  ARMS_SOON(Subject.PARTITION, "{subject}: arms by itself in {time}"),
  ARMING_POSTPONED(Subject.PARTITION, "{subject}: arming put off by {time}"),
  ARMING_FAILED(Subject.ZONE, "did not arm; open: {subject}"),
  WRONG_CODE(Subject.KEYPAD, "wrong code"),
  LISTENS_AGAIN(Subject.KEYPAD, "listens again"),
  LOCKED_OUT(Subject.KEYPAD, "does not listen"),
  NO_AUTHORITY(Subject.PARTITION, "not allowed for {subject}"),
  NO_AUTHORITY_ANYWHERE(Subject.SYSTEM, "not allowed here"),
  FOLLOWS_OTHERS(Subject.PARTITION, "{subject} follows the partitions that share it"),
  ALREADY_ARMED(Subject.PARTITION, "{subject} is armed like that already"),
  OPEN_ZONE(Subject.ZONE, "open: {subject}"),
  OPEN_LID(Subject.ZONE, "tampered: {subject}"),
  NOT_BYPASSABLE(Subject.ZONE, "must not be left out: {subject}"),
  ARMED_NO_BYPASS(Subject.ZONE, "armed: {subject} can't be left out now"),
  NOT_BYPASSED(Subject.ZONE, "is not left out: {subject}"),
  TECHNICIAN_ONLY(Subject.SYSTEM, "technicians only"),
  NO_ARMING_DUE(Subject.SYSTEM, "nothing is due to arm by itself"),
  NOT_PART_OF_SYSTEM(Subject.SYSTEM, "no such thing in this system");

  private final Subject subject;
  private final String phrase;

  Notice(Subject subject, String phrase) {
    this.subject = subject;
    this.phrase = phrase;
  }

  /** What the subject index names. */
  public Subject subject() {
    return subject;
  }

  /** The wording, with places for subject and time. */
  public String phrase() {
    return phrase;
  }
}
