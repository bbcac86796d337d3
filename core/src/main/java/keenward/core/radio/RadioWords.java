package keenward.core.radio;

import java.util.stream.Collectors;
import keenward.core.electrical.Figures;

/** What people read of radio sums, on every face alike. */
public final class RadioWords {

  /** To stand under every page of sums. */
  public static final String CAUTION =
      "Reckoned from a drawing: a sum of radio is good to several decibels at best. Walk-test every device with doors"
          + " shut. On a ladder mind your footing; in fire and hold-up systems the authority having jurisdiction decides"
          + " whether radio may be used.";

  private RadioWords() {}

  /** By whom a sender is heard. */
  public static String heardBy(RadioRoute route) {
    return route.links().stream()
        .map(link -> link.listener().name())
        .collect(Collectors.joining(", then "));
  }

  /** Whether a reckoned route keeps its reserve. */
  public static String verdict(RadioRoute route) {
    if (route.isEnough()) {
      return "holds";
    }
    return route.marginDecibels() < 0 ? "not heard" : "under its reserve";
  }

  /** What was fitted to the house, or why nothing was. */
  public static String fit(RadioAssessment radio) {
    int count = radio.measurements();
    return radio
        .fit()
        .map(fit ->
            "Fitted to "
                + count
                + " measurements: the house is "
                + decibels(Math.abs(fit.offsetDecibels()))
                + (fit.offsetDecibels() < 0 ? " dB weaker" : " dB stronger")
                + " than reckoned"
                + (fit.fitsWalls()
                    ? ", its walls take " + Figures.text(fit.wallScale(), "dB") + " times as much"
                    : "")
                + "; what is left over has a standard deviation of "
                + decibels(fit.sigmaDecibels())
                + " dB. All that follows counts with it.")
        .orElseGet(() ->
            "Not fitted to the house: "
                + count
                + " measured "
                + (count == 1 ? "level" : "levels")
                + ", at least "
                + Fit.LEAST_FOR_OFFSET
                + " are needed; add `measured level: -71 dBm` to devices.");
  }

  /** Where one receiver would hear best, and how the present ones do. */
  public static String bestReceiver(RadioAssessment radio, RadioMap.BestPlace place) {
    double now =
        radio.routes().stream()
            .filter(route -> route.repeaters() == 0)
            .mapToDouble(RadioRoute::marginDecibels)
            .min()
            .orElse(Double.NaN);
    return "A receiver alone would hear best at "
        + where(place)
        + ": least margin "
        + decibels(place.leastMarginDecibels())
        + " dB, of '"
        + place.worst().name()
        + "'"
        + (Double.isNaN(now) ? "." : "; as planned " + decibels(now) + " dB.");
  }

  /** Where a repeater would help most. */
  public static String bestRepeater(RadioMap.BestPlace place) {
    return "A repeater would help the devices without their reserve most at "
        + where(place)
        + ": least margin "
        + decibels(place.leastMarginDecibels())
        + " dB.";
  }

  private static String where(RadioMap.BestPlace place) {
    return "["
        + Figures.text(Math.round(place.at().xMetres() * 10) / 10.0)
        + ", "
        + Figures.text(Math.round(place.at().yMetres() * 10) / 10.0)
        + "] m in '"
        + place.room()
        + "', floor '"
        + place.floor()
        + "'";
  }

  private static String decibels(double value) {
    return Figures.text(value, "dB");
  }
}
