package keenward.core.electrical;

/**
 * A run of two conductors, there and back.
 *
 * @param metres length one way
 * @param ohmsPerKilometre resistance of one conductor
 * @param coresEachWay conductors side by side for each pole, 1 or 2
 */
public record TwoWireRun(double metres, double ohmsPerKilometre, int coresEachWay) {

  /** Resistance there and back, in ohms. */
  public double loopOhms() {
    return 2 * metres / 1000 * ohmsPerKilometre / coresEachWay;
  }

  /** Voltage lost at a steady current, in volts. */
  public double dropVolts(double milliamps) {
    return loopOhms() * milliamps / 1000;
  }
}
