package keenward.core.electrical.loop;

/**
 * How far a loop may be off its plan.
 *
 * @param closedContactOhms most that all closed contacts of the loop add
 * @param leakageOhms least resistance between its two cores that damp and dirt leave
 * @param coldCelsius lowest temperature of the cable
 * @param hotCelsius highest temperature of the cable
 * @param meterShare share of its reading by which a meter may be wrong
 */
public record LoopTolerances(
    double closedContactOhms,
    double leakageOhms,
    double coldCelsius,
    double hotCelsius,
    double meterShare) {

  /** Common practice, no source. */
  public static final LoopTolerances USUAL = new LoopTolerances(1, 1_000_000, -10, 60, 0.01);
}
