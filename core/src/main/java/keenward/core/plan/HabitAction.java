package keenward.core.plan;

/** What a person does to the system in a habit. */
public enum HabitAction implements Worded {
  /** Arms away and leaves. */
  ARM_AWAY("arm away"),
  /** Arms stay. */
  ARM_STAY("arm stay"),
  /** Arms for the night. */
  ARM_NIGHT("arm night"),
  /** Comes in and disarms. */
  DISARM("disarm");

  private final String word;

  HabitAction(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
