package keenward.core.electrical;

/**
 * How much of a supply's continuous rating its devices take.
 *
 * @param atRest share at rest, in per cent
 * @param inAlarm share with every device in alarm, in per cent
 */
public record OutputLoad(Explained atRest, Explained inAlarm) {
  /** Share above which a warning is common practice (no source). */
  public static final double USUAL_LIMIT_PERCENT = 80;

  /** The shares of a rating in milliamperes, more than 0. */
  public static OutputLoad of(SupplyLoads loads, double ratingMilliamps) {
    return new OutputLoad(
        share("Share of rating at rest", loads.outputAtRest(), ratingMilliamps),
        share("Share of rating in alarm", loads.outputInAlarm(), ratingMilliamps));
  }

  private static Explained share(String name, Explained load, double ratingMilliamps) {
    return new Explained(
        name,
        Figures.text(load.value()) + " mA / " + Figures.text(ratingMilliamps) + " mA x 100",
        load.value() / ratingMilliamps * 100,
        "%",
        load.certainty(),
        "devices only, without the supply's own board");
  }
}
