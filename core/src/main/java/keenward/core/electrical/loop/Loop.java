package keenward.core.electrical.loop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.electrical.ConductorResistance;
import keenward.core.electrical.TwoWireRun;
import keenward.core.plan.ContactForm;
import keenward.core.plan.LoopCable;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Zone;
import keenward.core.quantities.Length;
import keenward.core.quantities.Resistance;

/**
 * The loop of a zone: its resistors in series, those beside a contact short-circuited while that is
 * closed, the cable before them, and leakage across all of it.
 *
 * @param zone the zone
 * @param cable what the cable adds, when the plan says it
 * @param tolerances how far it may be off
 */
public record Loop(Zone zone, Optional<Cable> cable, LoopTolerances tolerances) {

  /**
   * The cable of a loop.
   *
   * @param metres length one way
   * @param conductor resistance of one core
   */
  public record Cable(double metres, ConductorResistance conductor) {

    /** There and back, at a temperature of the cable. */
    double ohms(double celsius) {
      return new TwoWireRun(metres, conductor.at(celsius).ohmsPerKilometre(), 1).loopOhms();
    }

    Cable asLongAs(double otherMetres) {
      return new Cable(otherMetres, conductor);
    }
  }

  /** What came of a zone. */
  public sealed interface Found {
    /** Its loop. */
    record Known(Loop loop) implements Found {}

    /** The plan does not say enough. */
    record NotKnown(MissingFact missing) implements Found {}

    /** It has none: radio, bus, or a loop that nothing is stated of. */
    record None() implements Found {}
  }

  /** The loop of a zone. */
  public static Found of(Zone zone, LoopTolerances tolerances) {
    Optional<LoopWiring> wiring = zone.wiring().find();
    if (wiring.isEmpty()) {
      return new Found.None();
    }
    if (zone.contact().find().isEmpty()) {
      return notKnown(zone, "contact", "the contact at rest", "contact: normally-closed");
    }
    if (zone.resistors().size() != wiring.get().resistors()) {
      return notKnown(
          zone,
          "resistors",
          "as many values as " + wiring.get().word() + " has",
          "resistors: [4.7 kohm, 4.7 kohm]");
    }
    if (zone.contact().find().get() == ContactForm.NORMALLY_OPEN && zone.resistors().size() > 1) {
      return notKnown(
          zone,
          "wiring",
          "how several resistors lie about a contact that is open at rest",
          "wiring: single resistor");
    }
    return new Found.Known(
        new Loop(zone, zone.loopCable().find().flatMap(Loop::cable), tolerances));
  }

  private static Found notKnown(Zone zone, String field, String what, String lineToAdd) {
    return new Found.NotKnown(
        new MissingFact(
            zone.path().then(field),
            "the loop of zone " + zone.number() + ", since the plan does not say " + what,
            lineToAdd));
  }

  private static Optional<Cable> cable(LoopCable stated) {
    Optional<Double> metres = stated.length().map(Length::metres).find();
    return stated
        .conductor()
        .find()
        .flatMap(ConductorResistance::of)
        .flatMap(conductor -> metres.map(each -> new Cable(each, conductor)));
  }

  /** The wiring. */
  public LoopWiring wiring() {
    return zone.wiring().find().orElseThrow();
  }

  /** The resistors, in the order of the plan: at rest, alarm, fault. */
  public List<Double> resistorsOhms() {
    return zone.resistors().stream().map(Resistance::ohms).toList();
  }

  /** Its wiring, resistors, contact and cable, in words. */
  public String circuit() {
    StringBuilder words = new StringBuilder(wiring().word());
    String separator = " ";
    for (Resistance each : zone.resistors()) {
      words.append(separator).append(each.written());
      separator = ", ";
    }
    words.append(", ").append(zone.contact().find().orElseThrow().word());
    zone.loopCable()
        .find()
        .flatMap(stated -> stated.length().map(Length::written).find())
        .ifPresent(length -> words.append(", ").append(length).append(" of cable"));
    return words.toString();
  }

  boolean isNormallyClosed() {
    return zone.contact().find().orElseThrow() == ContactForm.NORMALLY_CLOSED;
  }

  /** What the loop reads in each state, the lowest first. */
  public Map<LoopState, Band> bands() {
    return bands(cable);
  }

  /** The same with a cable of another length. */
  Map<LoopState, Band> bandsAt(double metres) {
    return bands(cable.map(each -> each.asLongAs(metres)));
  }

  private Map<LoopState, Band> bands(Optional<Cable> with) {
    Map<LoopState, List<Double>> series = series();
    List<Map.Entry<LoopState, Band>> bands = new ArrayList<>();
    double hot = with.map(each -> each.ohms(tolerances.hotCelsius())).orElse(0.0);
    series.forEach((state, resistors) -> bands.add(Map.entry(state, band(resistors, with))));
    if (!isSimplyClosed()) {
      // A short lies anywhere along the cable.
      bands.add(
          Map.entry(
              isNormallyClosed() ? LoopState.SHORT : LoopState.ALARM_OR_SHORT,
              new Band(0, 0, hot + tolerances.closedContactOhms())));
    }
    bands.add(
        Map.entry(
            openState(),
            new Band(
                tolerances.leakageOhms(), Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)));
    bands.sort((one, other) ->
        Double.compare(one.getValue().nominalOhms(), other.getValue().nominalOhms()));
    Map<LoopState, Band> sorted = new LinkedHashMap<>();
    bands.forEach(each -> sorted.put(each.getKey(), each.getValue()));
    return sorted;
  }

  /** A loop without resistors about a contact that is open at rest. */
  private boolean isOpenAtRest() {
    return !isNormallyClosed() && resistorsOhms().isEmpty();
  }

  /**
   * A loop without resistors about a contact that is closed at rest: a short is as good as rest.
   */
  private boolean isSimplyClosed() {
    return isNormallyClosed() && resistorsOhms().isEmpty();
  }

  private LoopState openState() {
    if (isOpenAtRest()) {
      return LoopState.REST_OR_CUT;
    }
    return isNormallyClosed() && resistorsOhms().size() < 2
        ? LoopState.ALARM_OR_CUT
        : LoopState.CUT;
  }

  /** The resistors in series in each state that has some, or that is a closed loop. */
  private Map<LoopState, List<Double>> series() {
    List<Double> values = resistorsOhms();
    Map<LoopState, List<Double>> series = new LinkedHashMap<>();
    if (isOpenAtRest()) {
      return series;
    }
    series.put(LoopState.AT_REST, values.isEmpty() ? List.of() : values.subList(0, 1));
    if (values.size() >= 2) {
      series.put(LoopState.IN_ALARM, values.subList(0, 2));
    }
    if (values.size() == 3) {
      series.put(LoopState.IN_FAULT, List.of(values.get(0), values.get(2)));
      series.put(LoopState.ALARM_AND_FAULT, values);
    }
    return series;
  }

  /** Every part pulls the same way, so the worst corners are those with all of them off alike. */
  private Band band(List<Double> resistors, Optional<Cable> with) {
    double least = with.map(each -> each.ohms(tolerances.coldCelsius())).orElse(0.0);
    double nominal = with.map(each -> each.ohms(20)).orElse(0.0);
    double most =
        with.map(each -> each.ohms(tolerances.hotCelsius())).orElse(0.0)
            + tolerances.closedContactOhms();
    for (double each : resistors) {
      double share = StandardValues.toleranceShare(each);
      least += each * (1 - share);
      nominal += each;
      most += each * (1 + share);
    }
    return new Band(parallel(least, tolerances.leakageOhms()), nominal, most);
  }

  static double parallel(double one, double other) {
    return one == 0 || other == 0 ? 0 : 1 / (1 / one + 1 / other);
  }
}
