package keenward.core.plan;

/** A day of the week. */
public enum Weekday implements Worded {
  /** Monday. */
  MON("mon"),
  /** Tuesday. */
  TUE("tue"),
  /** Wednesday. */
  WED("wed"),
  /** Thursday. */
  THU("thu"),
  /** Friday. */
  FRI("fri"),
  /** Saturday. */
  SAT("sat"),
  /** Sunday. */
  SUN("sun");

  private final String word;

  Weekday(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
