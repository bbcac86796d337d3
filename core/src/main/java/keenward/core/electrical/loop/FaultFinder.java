package keenward.core.electrical.loop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import keenward.core.electrical.Figures;

/**
 * What a resistance means that was measured at the panel's end of a loop, its cores taken off the
 * panel. A state of the loop comes first when its band holds the reading; then faults, each with
 * the arithmetic that leads to it. How likely they are beside each other is common practice, no
 * source.
 */
public final class FaultFinder {

  /** Bad joints are looked for up to so many ohms, and leaks down to so many. */
  private static final double MOST_JOINT_OHMS = 5_000;

  private static final double LEAST_LEAK_OHMS = 500;

  /** A resistor is recognised by its value when the reading comes so near to it. */
  private static final double RECOGNISED_SHARE = 0.04;

  private final Loop loop;
  private final double measured;
  private final Map<LoopState, Band> bands;
  private final List<Weighed> found = new ArrayList<>();

  private record Weighed(String what, String working, double weight) {}

  private FaultFinder(Loop loop, double measured) {
    this.loop = loop;
    this.measured = measured;
    bands = loop.bands();
  }

  /**
   * What a reading may mean, the likeliest first.
   *
   * @param measuredOhms the reading; infinite for an open loop
   */
  public static List<Diagnosis> find(Loop loop, double measuredOhms) {
    if (!(measuredOhms >= 0)) {
      throw new IllegalArgumentException("no resistance: " + measuredOhms);
    }
    FaultFinder finder = new FaultFinder(loop, measuredOhms);
    finder.states();
    if (measuredOhms < Double.POSITIVE_INFINITY && !loop.resistorsOhms().isEmpty()) {
      finder.shortOnTheWay();
      finder.otherResistor();
      finder.secondEndOfLine();
      finder.missingResistor();
      finder.badJoint();
      finder.leak();
      finder.moreThanOneContact();
    }
    List<Weighed> sorted =
        finder.found.stream()
            .sorted(Comparator.comparingDouble(Weighed::weight).reversed())
            .toList();
    List<Diagnosis> diagnoses = new ArrayList<>();
    for (Weighed each : sorted) {
      diagnoses.add(new Diagnosis(each.what(), each.working(), diagnoses.size() + 1));
    }
    return diagnoses;
  }

  private void add(double weight, String what, String working) {
    found.add(new Weighed(what, working, weight));
  }

  private void states() {
    bands.forEach((state, band) -> {
      if (band.holds(measured, loop.tolerances().meterShare())) {
        add(
            weight(state),
            "The loop is " + state.words() + "." + hint(state),
            ohms(measured) + " lies within " + band.corners());
      }
    });
  }

  private static double weight(LoopState state) {
    return switch (state) {
      case AT_REST, REST_OR_CUT -> 100;
      case IN_ALARM, ALARM_OR_CUT, ALARM_OR_SHORT -> 95;
      case IN_FAULT, ALARM_AND_FAULT -> 92;
      case CUT, SHORT -> 90;
    };
  }

  private String hint(LoopState state) {
    boolean isOpen = state == LoopState.CUT || state == LoopState.ALARM_OR_CUT;
    if (isOpen && loop.resistorsOhms().size() >= 2) {
      return " Look for a core off its terminal, a lid contact, or a contact without its resistor.";
    }
    return isOpen ? " Look for an open contact, then for a core off its terminal." : "";
  }

  private double rest() {
    return loop.resistorsOhms().getFirst();
  }

  private double cable() {
    return loop.cable().map(each -> each.ohms(20)).orElse(0.0);
  }

  /** A short before the first resistor: the cable up to it is all that is left. */
  private void shortOnTheWay() {
    loop.cable()
        .filter(cable -> measured > 0 && measured <= cable.ohms(loop.tolerances().hotCelsius()))
        .ifPresent(cable ->
            add(
                93,
                "A short about "
                    + Math.round(measured / cable.asLongAs(1).ohms(20))
                    + " m from the panel.",
                ohms(measured)
                    + " / "
                    + Figures.text(cable.asLongAs(1).ohms(20))
                    + " ohm for each metre of both cores"));
  }

  /** Another value in the place of one of the resistors. */
  private void otherResistor() {
    double base = measured - cable();
    List<Double> values = loop.resistorsOhms();
    recognise(base, values.getFirst(), "the end-of-line resistor", 60);
    if (values.size() >= 2) {
      recognise(
          base - values.getFirst(), values.get(1), "the alarm resistor, its contact open,", 40);
    }
  }

  private void recognise(double ohms, double planned, String where, double weight) {
    if (ohms <= 0) {
      return;
    }
    double standard = StandardValues.nearestE24(ohms);
    boolean isNear = Math.abs(standard - ohms) <= RECOGNISED_SHARE * standard;
    boolean isPlanned =
        Math.abs(standard - planned) <= StandardValues.toleranceShare(planned) * planned;
    if (isNear && !isPlanned) {
      add(
          weight - 20 * Math.abs(standard - ohms) / (RECOGNISED_SHARE * standard),
          "A resistor of "
              + ohms(standard)
              + " in place of "
              + where
              + " of "
              + ohms(planned)
              + ".",
          ohms(measured)
              + " less what else is in the loop leaves "
              + ohms(ohms)
              + "; the nearest value of E24 is "
              + ohms(standard));
    }
  }

  /** Two end-of-line resistors side by side: one was left in the panel or at a joint. */
  private void secondEndOfLine() {
    double both = Loop.parallel(rest() + cable(), rest());
    if (Math.abs(measured - both) <= RECOGNISED_SHARE * both) {
      add(
          70,
          "A second end-of-line resistor across the loop, left at the panel or in a joint.",
          ohms(rest()) + " beside " + ohms(rest() + cable()) + " make " + ohms(both));
    }
  }

  /** The end-of-line resistor bridged while a contact is open, so that only its own is left. */
  private void missingResistor() {
    if (loop.resistorsOhms().size() >= 2) {
      double alarm = loop.resistorsOhms().get(1) + cable();
      boolean isRest = Math.abs(loop.resistorsOhms().get(1) - rest()) <= 0.15 * rest();
      if (!isRest && Math.abs(measured - alarm) <= RECOGNISED_SHARE * alarm) {
        add(
            50,
            "The end-of-line resistor is bridged or missing, and the contact is open.",
            ohms(loop.resistorsOhms().get(1)) + " alone, with the cable " + ohms(alarm));
      }
    }
  }

  private void badJoint() {
    bands.forEach((state, band) -> {
      double more = measured - band.nominalOhms();
      if (isClosed(state) && measured > band.mostOhms() && more <= MOST_JOINT_OHMS) {
        add(
            (state == LoopState.AT_REST ? 25 : 0) + (more <= 50 ? 40 : more <= 500 ? 25 : 10),
            "A bad joint or a dirty contact of about "
                + ohms(more)
                + ", the loop "
                + state.words()
                + ".",
            ohms(measured) + " - " + ohms(band.nominalOhms()) + " = " + ohms(more));
      }
    });
  }

  private void leak() {
    bands.forEach((state, band) -> {
      if (isClosed(state) && measured > 0 && measured < band.leastOhms()) {
        double leak = 1 / (1 / measured - 1 / band.nominalOhms());
        if (leak >= LEAST_LEAK_OHMS) {
          add(
              (state == LoopState.AT_REST ? 25 : 0)
                  + (leak >= 100_000 ? 35 : leak >= 10_000 ? 25 : 10),
              "Damp or a damaged cable: about "
                  + ohms(leak)
                  + " between the cores, the loop "
                  + state.words()
                  + ".",
              "1 / (1 / "
                  + ohms(measured)
                  + " - 1 / "
                  + ohms(band.nominalOhms())
                  + ") = "
                  + ohms(leak));
        }
      }
    });
  }

  /** Several contacts in a loop, each with an alarm resistor of its own. */
  private void moreThanOneContact() {
    if (loop.resistorsOhms().size() != 2) {
      return;
    }
    double alarm = loop.resistorsOhms().get(1);
    for (int open = 2; open <= 5; open++) {
      double sum = rest() + open * alarm + cable();
      if (Math.abs(measured - sum) <= RECOGNISED_SHARE * sum) {
        add(
            loop.zone().devices().size() > 1 ? 80 : 45,
            open + " contacts are open, each with an alarm resistor of its own.",
            ohms(rest()) + " + " + open + " x " + ohms(alarm) + " = " + ohms(sum));
      }
    }
  }

  /** Whether a state has resistors that a joint or a leak could add to. */
  private static boolean isClosed(LoopState state) {
    return switch (state) {
      case AT_REST, IN_ALARM, IN_FAULT, ALARM_AND_FAULT -> true;
      case SHORT, CUT, ALARM_OR_CUT, ALARM_OR_SHORT, REST_OR_CUT -> false;
    };
  }

  /** A resistance in print, to three digits at least. */
  public static String ohms(double value) {
    if (value == Double.POSITIVE_INFINITY) {
      return "open";
    }
    if (value >= 999_500) {
      return Figures.text(Math.round(value / 10_000) / 100.0) + " Mohm";
    }
    if (value >= 999.5) {
      return Figures.text(Math.round(value / 10) / 100.0) + " kohm";
    }
    return Figures.text(Math.round(value * 10) / 10.0) + " ohm";
  }
}
