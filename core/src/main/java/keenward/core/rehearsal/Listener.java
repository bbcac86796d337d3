package keenward.core.rehearsal;

/** Hears what the system does while an input is worked off. */
@FunctionalInterface
public interface Listener {

  /** Hears nothing. */
  Listener NONE = (afterTenths, output) -> {};

  /**
   * The system does something.
   *
   * @param afterTenths how long after the start of the input, in tenths of a second; 0 unless time
   *     passes
   * @param output what it does
   */
  void output(int afterTenths, Output output);
}
