package keenward.core.plan;

/** What a user may do. */
public enum UserRole implements Worded {
  /** Arms, disarms, bypasses, and manages users. */
  MASTER("master"),
  /** Arms and disarms. */
  USER("user"),
  /** Arms, and disarms only what they armed themselves when the panel permits. */
  ARM_ONLY("arm-only"),
  /** Disarms as an ordinary user and silently asks for help. */
  DURESS("duress"),
  /** Installs and services; cannot disarm what a user armed unless the regime allows. */
  TECHNICIAN("technician");

  private final String word;

  UserRole(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
