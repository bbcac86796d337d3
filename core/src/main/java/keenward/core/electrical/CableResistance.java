package keenward.core.electrical;

import java.util.Optional;
import keenward.core.plan.Cable;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Length;
import keenward.core.quantities.Temperature;

/**
 * The resistance of a cable, there and back.
 *
 * @param run length, conductor and cores
 * @param conductor resistance of one conductor at its temperature
 */
record CableResistance(TwoWireRun run, ConductorResistance conductor) {
  /** Temperature of a conductor in a warm ceiling void; common practice, no source. */
  static final double USUAL_CELSIUS = 40;

  /** The resistance; empty while length or conductor are not known or in no table. */
  static Optional<CableResistance> of(Cable cable) {
    return cable
        .conductor()
        .find()
        .flatMap(size ->
            cable
                .length()
                .find()
                .map(Length::metres)
                .filter(metres -> metres > 0)
                .flatMap(metres -> of(cable, metres, size, cable.doubled().orElse(false))));
  }

  /** The resistance of a cable that is changed. */
  static Optional<CableResistance> of(
      Cable cable, double metres, Conductor size, boolean isDoubled) {
    double celsius = cable.temperature().map(Temperature::celsius).orElse(USUAL_CELSIUS);
    return ConductorResistance.of(size)
        .map(cold -> cold.at(celsius))
        .map(warm ->
            new CableResistance(
                new TwoWireRun(metres, warm.ohmsPerKilometre(), isDoubled ? 2 : 1), warm));
  }

  double ohms() {
    return run.loopOhms();
  }

  /** The sum that gives its ohms. */
  String working() {
    return "2 x "
        + Figures.text(run.metres())
        + " m x "
        + Figures.text(run.ohmsPerKilometre())
        + " ohm/km"
        + (run.coresEachWay() == 2 ? " / 2 cores" : "");
  }

  /** What is missing, and the line that says it. */
  static MissingPart missing(Cable cable) {
    if (!cable.length().find().filter(length -> length.metres() > 0).isPresent()) {
      return new MissingPart("lacks its length", "length: ... m");
    }
    return cable
        .conductor()
        .find()
        .map(size ->
            new MissingPart(
                "has a size that no table covers, " + size.written(), "conductor: ... mm2"))
        .orElse(new MissingPart("lacks its conductor", "conductor: ... mm2"));
  }

  /**
   * Why a resistance is not known.
   *
   * @param what what the cable lacks
   * @param line the line to add
   */
  record MissingPart(String what, String line) {}
}
