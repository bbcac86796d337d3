package keenward.core.rules.wireless;

import java.util.List;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.radio.RadioAssessment;
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
import keenward.core.rules.Words;

/** A radio device is heard with too little in hand, or not at all. */
public final class MarginBelowReserve implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 3, "margin-below-reserve", Severity.ERROR)
          .source(Source.memory("ITU-R P.1238", "", "log-normal shadowing, standard deviation"))
          .source(Source.memory("ITU-R P.525 and P.2040", "", "loss of distance and of walls"))
          .purpose(
              "Reckons the level of each radio device at the receiver, straight or by repeaters, and compares "
                  + "its margin over the receiver's sensitivity with the reserve for 99 % of places. Less than "
                  + "nothing is an error.")
          .consequence(
              "A device that is just heard on the day of the visit is lost when a cupboard is moved, a door is "
                  + "shut or somebody stands in the way.")
          .limits(
              "Straight ways through walls of usual thickness (docs/methods/radio.md); reflections, wiring, "
                  + "furniture and aerial direction are left out. A measured level counts before a reckoned one: "
                  + "then RAD-08 judges.")
          .parameter("reserve in homes", "18.6", "dB")
          .parameter("reserve elsewhere", "23.3", "dB")
          .remedy(
              "Move the receiver, add a repeater, or wire the device; `radio` proposes a place.")
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -20 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -85 dBm, frequency: 868.3 MHz }
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
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -85 dBm, frequency: 868.3 MHz }
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -20 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -94 dBm, frequency: 868.3 MHz }
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
    RadioAssessment radio = input.radio();
    radio.levelsNotAssessed().stream()
        .findFirst()
        .ifPresent((MissingFact missing) -> report.notAssessed(missing));
    for (RadioRoute route : radio.routes()) {
      if (route.links().getFirst().measured().isPresent()) {
        continue;
      }
      report.judged();
      if (!route.isEnough()) {
        report(route, report);
      }
    }
  }

  private static void report(RadioRoute route, Report report) {
    RadioLink weakest = route.weakest();
    String device = route.sender().name();
    report.found(
        route.marginDecibels() < 0 ? Severity.ERROR : Severity.WARNING,
        PlanPath.of("devices", device),
        "'"
            + weakest.listener().name()
            + "' hears '"
            + weakest.sender().name()
            + "' at about "
            + Math.round(weakest.level())
            + " dBm, "
            + (weakest.marginDecibels() < 0
                ? Math.round(-weakest.marginDecibels()) + " dB under"
                : "only " + Math.round(weakest.marginDecibels()) + " dB over")
            + " its sensitivity; "
            + Words.number(Math.ceil(10 * weakest.shadowing().reserveDecibels()) / 10)
            + " dB hold in 99 % of places.",
        "Move '"
            + weakest.listener().name()
            + "', add a repeater, or wire '"
            + device
            + "'; measure on site and enter `measured level:`.",
        Involved.devices(List.of(device, weakest.listener().name())));
  }
}
