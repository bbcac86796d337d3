package keenward.core.electrical;

import java.util.OptionalDouble;
import keenward.core.plan.Fact;
import keenward.core.quantities.Temperature;

/**
 * The temperature factor of a supply with its explanation. A battery warmer than 25 C earns
 * nothing: its factor below 1 is not credited.
 */
final class ColdFactor {
  private static final String NAME = "Temperature factor";

  private ColdFactor() {}

  static Explained of(Fact<Temperature> lowest) {
    Temperature temperature = lowest.orNull();
    if (temperature == null) {
      return new Explained(
          NAME, "", 1, "", Certainty.AT_LEAST, "lowest temperature not known, nothing added");
    }
    OptionalDouble factor = TemperatureFactor.at(temperature.celsius());
    if (factor.isPresent()) {
      double credited = Math.max(1, factor.getAsDouble());
      String working =
          factor.getAsDouble() < 1
              ? "at "
                  + temperature.written()
                  + ": "
                  + Figures.text(factor.getAsDouble())
                  + ", a warm battery is not credited"
              : "at " + temperature.written();
      return Explained.known(NAME, working, credited, "", TemperatureFactor.SOURCE);
    }
    boolean cold = temperature.celsius() < TemperatureFactor.LOWEST_CELSIUS;
    double bound = cold ? TemperatureFactor.at(TemperatureFactor.LOWEST_CELSIUS).getAsDouble() : 1;
    return new Explained(
        NAME,
        "at " + temperature.written() + ", outside the table of -3.9 C to 51.7 C",
        bound,
        "",
        Certainty.AT_LEAST,
        TemperatureFactor.SOURCE);
  }
}
