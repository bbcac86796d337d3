package keenward.core.rules.wireless;

import java.util.List;
import keenward.core.plan.PlanPath;
import keenward.core.radio.RadioLink;
import keenward.core.radio.RadioRoute;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A measured level is far from the reckoned one. */
public final class MeasuredFarFromReckoned implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 9, "measured-far-from-reckoned", Severity.ADVICE)
          .source(Source.memory("ITU-R P.1238", "", "log-normal shadowing, standard deviation"))
          .purpose(
              "Compares measured levels with reckoned ones and looks for more than two standard deviations "
                  + "between them.")
          .consequence(
              "Something stands in the way that the plan does not know, the device is not where it says, or "
                  + "its power or the material of a wall is wrong; every other sum for that part of the house is "
                  + "then in doubt.")
          .limits(
              "One in twenty good measurements lies as far off by chance. With three measurements the model is "
                  + "refitted to the house first.")
          .parameter("two standard deviations in homes", "16", "dB")
          .parameter("two standard deviations elsewhere", "20", "dB")
          .remedy("Measure again; then put right place, power or wall materials in the plan.")
          .broken(
              """
              keenward: 1
              site: { name: Example, premises: dwelling }
              panel: { radio supervision: 24 h }
              floors:
                Ground:
                  wall material: brick
                  rooms:
                    Hall:   { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 60 min, measured level: -70 dBm }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
              zones:
                1: { name: Window, response: instant, device: Window contact }
              """)
          .mended(
              """
              keenward: 1
              site: { name: Example, premises: dwelling }
              panel: { radio supervision: 24 h }
              floors:
                Ground:
                  wall material: brick
                  rooms:
                    Hall:   { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
                  walls:
                    - { between: [Hall, Garage], material: metal }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 60 min, measured level: -70 dBm }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
              zones:
                1: { name: Window, response: instant, device: Window contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: { name: Example, premises: dwelling }
              panel: { radio supervision: 24 h }
              floors:
                Ground:
                  wall material: brick
                  rooms:
                    Hall:   { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 60 min, measured level: -60 dBm }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
              zones:
                1: { name: Window, response: instant, device: Window contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (RadioRoute route : input.radio().routes()) {
      RadioLink link = route.links().getFirst();
      if (link.measured().isEmpty()) {
        continue;
      }
      report.judged();
      double off = link.measured().get() - link.level();
      if (Math.abs(off) > 2 * link.shadowing().sigmaDecibels()) {
        String device = link.sender().name();
        report.found(
            PlanPath.of("devices", device, "measured level"),
            "'"
                + device
                + "' was measured "
                + Math.round(Math.abs(off))
                + " dB "
                + (off < 0 ? "weaker" : "stronger")
                + " than the drawing lets expect ("
                + Math.round(link.level())
                + " dBm).",
            "Measure again; then put right its place, its power or the walls between.",
            Involved.devices(List.of(device)));
      }
    }
  }
}
