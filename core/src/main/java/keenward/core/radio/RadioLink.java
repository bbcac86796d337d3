package keenward.core.radio;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.electrical.Explained;
import keenward.core.electrical.Figures;
import keenward.core.plan.Device;
import keenward.core.plan.PremisesKind;

/**
 * One sender as one receiver or repeater hears it.
 *
 * @param sender who sends
 * @param listener the receiver or repeater
 * @param path the way between them
 * @param powerDecibelMilliwatts e.i.r.p. of the sender
 * @param sensitivityDecibelMilliwatts the weakest level that the listener understands
 * @param fit what the house was measured to do; {@link Fit#NONE} where too little was measured
 * @param premises kind of premises, where the plan says it
 */
public record RadioLink(
    Device sender,
    Device listener,
    RadioPath path,
    double powerDecibelMilliwatts,
    double sensitivityDecibelMilliwatts,
    Fit fit,
    Optional<PremisesKind> premises) {

  private static final String FROM_PLAN = "the plan";

  /** The level at the listener, in dBm, as reckoned from the drawing and fitted to the house. */
  public double level() {
    return levelOfDrawing() + houseDecibels();
  }

  /** The same from the drawing alone. */
  double levelOfDrawing() {
    return powerDecibelMilliwatts - path.freeSpaceDecibels() - path.obstacleDecibels();
  }

  private double houseDecibels() {
    return fit.houseDecibels(path.obstacleDecibels());
  }

  RadioLink fitted(Fit house) {
    return new RadioLink(
        sender,
        listener,
        path,
        powerDecibelMilliwatts,
        sensitivityDecibelMilliwatts,
        house,
        premises);
  }

  /** How far the level lies above the sensitivity. */
  public double marginDecibels() {
    return level() - sensitivityDecibelMilliwatts;
  }

  /** How levels differ from place to place. */
  public Shadowing shadowing() {
    return new Shadowing(SiteGeneral.of(premises).sigmaDecibels());
  }

  /** Whether the margin keeps the reserve for 99 % of places. */
  public boolean isEnough() {
    return marginDecibels() >= shadowing().reserveDecibels();
  }

  /** The level that was measured, in dBm. */
  public Optional<Double> measured() {
    return sender.measuredLevel().map(level -> level.decibelMilliwatts()).find();
  }

  /** How far the level that was measured lies above the sensitivity. */
  public Optional<Double> measuredMarginDecibels() {
    return measured().map(level -> level - sensitivityDecibelMilliwatts);
  }

  /** The sum, line by line; a second opinion last. */
  public List<Explained> lines() {
    List<Explained> lines = new ArrayList<>();
    lines.add(
        Explained.known(
            "Loss of the distance",
            "20 log(4 pi x "
                + metres()
                + " m / "
                + Figures.text(FreeSpace.wavelengthMetres(path.megahertz()))
                + " m)",
            path.freeSpaceDecibels(),
            "dB",
            "ITU-R P.525"));
    Map<RadioPath.Crossed, Integer> counts = new LinkedHashMap<>();
    path.crossed().forEach(each -> counts.merge(each, 1, Integer::sum));
    counts.forEach((crossed, count) ->
        lines.add(
            Explained.known(
                "Through " + (count > 1 ? count + " x " : "") + crossed.what(),
                (count > 1 ? count + " x " + decibels(crossed.obstacle().decibels()) + " dB, " : "")
                    + crossed.obstacle().working(),
                count * crossed.obstacle().decibels(),
                "dB",
                crossed.obstacle().source())));
    if (fit.measurements() > 0) {
      lines.add(
          Explained.known(
              "The house against the drawing",
              fit.fitsWalls()
                  ? decibels(fit.offsetDecibels())
                      + " dB + (1 - "
                      + Figures.text(fit.wallScale())
                      + ") x "
                      + decibels(path.obstacleDecibels())
                      + " dB"
                  : "",
              houseDecibels(),
              "dB",
              "fitted to " + fit.measurements() + " measurements"));
    }
    lines.add(
        Explained.known(
            "Level at '" + listener.name() + "'",
            decibels(powerDecibelMilliwatts)
                + " dBm - "
                + decibels(path.freeSpaceDecibels())
                + " dB - "
                + decibels(path.obstacleDecibels())
                + " dB"
                + (fit.measurements() > 0 ? " + (" + decibels(houseDecibels()) + " dB)" : ""),
            level(),
            "dBm",
            FROM_PLAN));
    lines.add(margin("Margin", level(), FROM_PLAN));
    lines.add(shadowing().reserve());
    measured()
        .ifPresent(measured ->
            lines.add(margin("Margin as measured", measured, "measured level of the plan")));
    secondOpinions(lines);
    return lines;
  }

  private Explained margin(String name, double level, String source) {
    return Explained.known(
        name,
        decibels(level) + " dBm - (" + decibels(sensitivityDecibelMilliwatts) + " dBm)",
        level - sensitivityDecibelMilliwatts,
        "dB",
        source);
  }

  /** Margin by P.1238, which knows no walls. */
  public double secondOpinionMarginDecibels() {
    SiteGeneral table = SiteGeneral.of(premises);
    return powerDecibelMilliwatts
        - SiteGeneral.lossDecibels(
            path.megahertz(),
            path.metres(),
            table.coefficient(path.megahertz()),
            table.floorDecibels(path.megahertz(), path.floors()))
        - sensitivityDecibelMilliwatts;
  }

  private void secondOpinions(List<Explained> lines) {
    SiteGeneral table = SiteGeneral.of(premises);
    double coefficient = table.coefficient(path.megahertz());
    double floors = table.floorDecibels(path.megahertz(), path.floors());
    lines.add(
        Explained.known(
            "Second opinion: margin without a drawing",
            decibels(powerDecibelMilliwatts - sensitivityDecibelMilliwatts)
                + " dB - (20 log "
                + Figures.text(path.megahertz())
                + " + "
                + Figures.text(coefficient)
                + " log "
                + metres()
                + " + "
                + Figures.text(floors)
                + " - 28) dB",
            secondOpinionMarginDecibels(),
            "dB",
            "ITU-R P.1238-8 "
                + table.word()
                + (path.megahertz() < 800 ? ", extended below its range" : "")
                + "; table from memory"));
    if (table != SiteGeneral.RESIDENTIAL && path.floors() == 0) {
      SiteGeneral.Newer newer = newer();
      double loss = newer.lossDecibels(path.megahertz(), path.metres());
      lines.add(
          Explained.known(
              "Another: by the newer edition",
              decibels(powerDecibelMilliwatts - sensitivityDecibelMilliwatts)
                  + " dB - "
                  + decibels(loss)
                  + " dB",
              powerDecibelMilliwatts - loss - sensitivityDecibelMilliwatts,
              "dB",
              "ITU-R P.1238-11 Table 2, "
                  + (path.crossed().isEmpty() ? "in sight" : "out of sight")));
    }
  }

  private SiteGeneral.Newer newer() {
    boolean isIndustrial =
        premises
            .filter(kind ->
                kind == PremisesKind.WORKSHOP
                    || kind == PremisesKind.WAREHOUSE
                    || kind == PremisesKind.FARM)
            .isPresent();
    if (isIndustrial) {
      return path.crossed().isEmpty()
          ? SiteGeneral.Newer.INDUSTRIAL_IN_SIGHT
          : SiteGeneral.Newer.INDUSTRIAL_OUT_OF_SIGHT;
    }
    return path.crossed().isEmpty()
        ? SiteGeneral.Newer.OFFICE_IN_SIGHT
        : SiteGeneral.Newer.OFFICE_OUT_OF_SIGHT;
  }

  private String metres() {
    return Figures.text(Math.round(path.metres() * 10) / 10.0);
  }

  private static String decibels(double value) {
    return Figures.text(value, "dB");
  }
}
