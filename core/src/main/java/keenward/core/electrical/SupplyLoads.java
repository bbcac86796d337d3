package keenward.core.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.Fact;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Supply;
import keenward.core.quantities.Current;
import keenward.core.quantities.Span;

/**
 * Everything that draws from one supply, line by line. The alarm load takes every device to be in
 * alarm at once.
 *
 * @param supply name of the supply
 * @param own what its own board draws
 * @param devices what the devices draw, in the order of the plan
 */
public record SupplyLoads(String supply, LoadLine own, List<LoadLine> devices) {
  private static final String EVERYTHING = "every device in alarm at once, common practice";

  /** Copies the list. */
  public SupplyLoads {
    devices = List.copyOf(devices);
  }

  /** The loads of a supply. */
  public static SupplyLoads of(SitePlan plan, Supply supply, Feeds feeds) {
    LoadLine own =
        new LoadLine(
            "own board of " + supply.name(),
            PlanPath.of("supplies", supply.name()),
            supply.ownStandbyCurrent(),
            supply.ownAlarmCurrent(),
            Fact.missing(),
            "",
            "supplies / " + supply.name(),
            "supplies / " + supply.name());
    List<LoadLine> devices = feeds.of(supply.name()).stream().map(fed -> line(plan, fed)).toList();
    return new SupplyLoads(supply.name(), own, devices);
  }

  /** Every line, the supply's own board first. */
  public List<LoadLine> lines() {
    List<LoadLine> lines = new ArrayList<>();
    lines.add(own);
    lines.addAll(devices);
    return List.copyOf(lines);
  }

  /** Total at rest, in milliamperes. */
  public Explained standby() {
    return total("Load at rest", lines(), LoadLine::standbyMilliamps, LoadLine::isStandbyKnown, "");
  }

  /** Total in alarm, in milliamperes. */
  public Explained alarm() {
    return total(
        "Load in alarm", lines(), LoadLine::alarmMilliamps, LoadLine::isAlarmKnown, EVERYTHING);
  }

  /** Load of the devices alone at rest, in milliamperes. */
  public Explained outputAtRest() {
    return total(
        "Output at rest", devices, LoadLine::standbyMilliamps, LoadLine::isStandbyKnown, "");
  }

  /** Load of the devices alone in alarm, in milliamperes. */
  public Explained outputInAlarm() {
    return total(
        "Output in alarm", devices, LoadLine::alarmMilliamps, LoadLine::isAlarmKnown, EVERYTHING);
  }

  /** Devices that are back at rest before an alarm of so many minutes is over. */
  public List<BatteryNeed.EarlyRest> backAtRest(double alarmMinutes) {
    return lines().stream()
        .filter(line -> line.alarmMinutes(alarmMinutes) < alarmMinutes)
        .filter(line -> line.alarmMilliamps() > line.standbyMilliamps())
        .map(line ->
            new BatteryNeed.EarlyRest(
                line.name(),
                line.alarmMinutes(alarmMinutes),
                line.alarmMilliamps() - line.standbyMilliamps()))
        .toList();
  }

  /** The currents that are not known, each with the line to add. */
  public List<MissingFact> unknown() {
    List<MissingFact> unknown = new ArrayList<>();
    for (LoadLine line : lines()) {
      boolean board = line.equals(own);
      if (!line.isStandbyKnown()) {
        unknown.add(missing(line, "at rest", board ? "own standby current" : "standby current"));
      }
      if (!line.isAlarmKnown()) {
        unknown.add(missing(line, "in alarm", board ? "own alarm current" : "alarm current"));
      }
    }
    return List.copyOf(unknown);
  }

  private static MissingFact missing(LoadLine line, String when, String key) {
    return new MissingFact(
        line.path(),
        "the current of " + line.name() + " " + when + ", so that totals say \"at least\"",
        key + ": ... mA");
  }

  private static Explained total(
      String name,
      List<LoadLine> lines,
      ToDoubleFunction<LoadLine> milliamps,
      Predicate<LoadLine> known,
      String source) {
    List<String> terms = new ArrayList<>();
    double total = 0;
    boolean complete = true;
    for (LoadLine line : lines) {
      double each = milliamps.applyAsDouble(line);
      total += each;
      complete &= known.test(line);
      if (each != 0) {
        terms.add(Figures.text(each));
      }
    }
    return new Explained(
        name,
        terms.size() > 1 ? String.join(" + ", terms) : "",
        total,
        "mA",
        complete ? Certainty.KNOWN : Certainty.AT_LEAST,
        source);
  }

  private static LoadLine line(SitePlan plan, Feeds.Fed fed) {
    Device device = fed.device();
    DeviceTraits traits = device.traits();
    boolean dry = Feeds.isDry(device);
    Fact<Span> alarmTime =
        isSounder(device) ? traits.alarmTime().or(plan.panel().sounderTime()) : traits.alarmTime();
    Fact<Current> nothing = Fact.of(new Current(0, "0 mA"));
    return new LoadLine(
        device.name(),
        PlanPath.of("devices", device.name()),
        dry ? nothing : traits.standbyCurrent(),
        dry ? nothing : traits.alarmCurrent(),
        alarmTime,
        traits.alarmTime().isGiven() ? "alarm time in the plan" : "sounder time of the panel",
        dry ? "a plain switch draws nothing" : source(plan, fed, traits.standbyCurrent(), true),
        dry ? "a plain switch draws nothing" : source(plan, fed, traits.alarmCurrent(), false));
  }

  private static boolean isSounder(Device device) {
    return switch (device.kind()) {
      case SOUNDER, SIREN, STROBE -> true;
      default -> false;
    };
  }

  private static String source(
      SitePlan plan, Feeds.Fed fed, Fact<Current> current, boolean standby) {
    Device device = fed.device();
    String stated =
        device
            .type()
            .find()
            .flatMap(
                name -> plan.types().stream().filter(type -> type.name().equals(name)).findFirst())
            .filter(type ->
                current.isGiven()
                    && current.equals(
                        standby ? type.traits().standbyCurrent() : type.traits().alarmCurrent()))
            .map(type -> "types / " + type.name())
            .orElse("devices / " + device.name());
    String where = current.isGiven() ? stated : "not known";
    return fed.reason().isEmpty() ? where : where + "; " + fed.reason();
  }
}
