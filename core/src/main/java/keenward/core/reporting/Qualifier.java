package keenward.core.reporting;

import java.util.Optional;

/** The first digit of a DC-05 event: whether it begins, ends or goes on. */
public enum Qualifier {
  /** A new event; for arming reports, an opening (disarming). */
  NEW_EVENT(1, "new event"),
  /** A restore; for arming reports, a closing (arming). */
  RESTORE(3, "restore"),
  /** A condition reported earlier is still present. */
  STILL_PRESENT(6, "still present");

  private final int digit;
  private final String meaning;

  Qualifier(int digit, String meaning) {
    this.digit = digit;
    this.meaning = meaning;
  }

  /** The digit sent. */
  public int digit() {
    return digit;
  }

  /** Its meaning in words. */
  public String meaning() {
    return meaning;
  }

  /** The qualifier of a digit, when DC-05 knows it. */
  public static Optional<Qualifier> find(int digit) {
    for (Qualifier qualifier : values()) {
      if (qualifier.digit == digit) {
        return Optional.of(qualifier);
      }
    }
    return Optional.empty();
  }
}
