package keenward.core.rules;

/** What a rule is about. Its letters begin the codes of the family's rules. */
public enum RuleFamily {
  /** What the panel can hold. */
  CAPACITY("CAP", "capacity"),
  /** Which device and input stands behind which number. */
  ADDRESSING("ADR", "addressing"),
  /** What the system does when a zone is violated. */
  RESPONSES("RSP", "responses"),
  /** Parts of the system that are armed on their own. */
  PARTITIONS("PAR", "partitions"),
  /** The way from an entry door to the keypad. */
  ENTRY_ROUTE("ENT", "entry route"),
  /** Delays, windows and limits. */
  TIMING("TIM", "timing"),
  /** What is live in which arming mode. */
  ARMING("ARM", "arming"),
  /** People with a code. */
  USERS("USR", "users"),
  /** Names at the keypad and on paper. */
  LABELS("LAB", "labels"),
  /** Radio devices. */
  WIRELESS("RAD", "wireless"),
  /** Wired loops and their resistors. */
  LOOPS("LOP", "loops"),
  /** Supplies and batteries, and the voltage that is left at devices. */
  POWER("PWR", "power"),
  /** Networks of cables. */
  CABLES("CAB", "cables"),
  /** Fire and carbon monoxide. */
  FIRE_AND_CARBON_MONOXIDE("FIR", "fire and carbon monoxide"),
  /** What reaches the monitoring centre. */
  REPORTING("REP", "reporting"),
  /** What of the building is watched. */
  SURVEY("SUR", "survey"),
  /** Contacts and magnets. */
  CONTACTS("CON", "contacts"),
  /** What is kept, and what is due. */
  RECORDS("REC", "records");

  private final String letters;
  private final String words;

  RuleFamily(String letters, String words) {
    this.letters = letters;
    this.words = words;
  }

  /** The letters that begin the codes of this family. */
  public String letters() {
    return letters;
  }

  /** The family in words. */
  public String words() {
    return words;
  }
}
