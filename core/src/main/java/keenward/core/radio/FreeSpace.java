package keenward.core.radio;

/** Loss where nothing is in the way, by Rec. ITU-R P.525. */
public final class FreeSpace {

  static final double METRES_A_MICROSECOND = 299.792458;

  private FreeSpace() {}

  /** The wavelength in metres. */
  public static double wavelengthMetres(double megahertz) {
    return METRES_A_MICROSECOND / megahertz;
  }

  /**
   * Loss between aerials without direction: 20 log(4 pi d / lambda), in decibels.
   *
   * @param megahertz the frequency, above zero
   * @param metres the distance, above zero
   */
  public static double lossDecibels(double megahertz, double metres) {
    return 20 * Math.log10(4 * Math.PI * metres / wavelengthMetres(megahertz));
  }

  /**
   * The e.i.r.p. that makes a field strength at a distance, in dBm: P.525 eq. (1), e = sqrt(30 p) /
   * d.
   */
  static double powerDecibelMilliwatts(double voltsAMetre, double metres) {
    return 10 * Math.log10(1000 * Math.pow(voltsAMetre * metres, 2) / 30);
  }
}
