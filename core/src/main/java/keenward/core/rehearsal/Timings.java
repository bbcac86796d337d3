package keenward.core.rehearsal;

import java.util.Arrays;

/** The numbers that a system goes by, one for each {@link TimingSetting}. */
public final class Timings {

  private final int[] values;

  private Timings(int[] values) {
    this.values = values;
  }

  /** Every number at its stated default. */
  public static Timings standard() {
    TimingSetting[] settings = TimingSetting.values();
    int[] values = new int[settings.length];
    for (TimingSetting setting : settings) {
      values[setting.slot()] = setting.standard();
    }
    return new Timings(values);
  }

  /** The value of a setting: tenths of a second, or a count where the setting says so. */
  public int of(TimingSetting setting) {
    return values[setting.slot()];
  }

  /** The same numbers but for one. */
  public Timings with(TimingSetting setting, int value) {
    if (value < 0 || (value == 0 && !setting.mayBeZero())) {
      throw new IllegalArgumentException(setting.word() + " can't be " + value);
    }
    int[] others = values.clone();
    others[setting.slot()] = value;
    return new Timings(others);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Timings timings && Arrays.equals(values, timings.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }
}
