package keenward.core.rules.wireless;

import java.util.List;
import keenward.core.plan.PlanPath;
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

/** A radio device reaches the receiver by several repeaters. */
public final class RepeaterBehindRepeater implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 5, "repeater-behind-repeater", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for radio devices that reach a receiver with their reserve only by two repeaters or more.")
          .consequence(
              "Many repeaters do not pass on what a repeater sent; where they do, each adds delay and one more "
                  + "cell or supply that can fail.")
          .limits(
              "The route is the one with the fewest repeaters that keeps its reserve; which repeater a device "
                  + "is told to use the plan does not say.")
          .parameter("repeaters on the way", "1", "")
          .remedy(
              "Place one repeater where it hears the device and is heard by the receiver, or add a receiver.")
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
                  walls:
                    - { between: [Hall, Garage], material: metal }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -10 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -60 dBm, frequency: 868.3 MHz }
                Near repeater: { kind: repeater, wiring: wired, room: Hall, at: [4, 2], sensitivity: -100 dBm, frequency: 868.3 MHz, radio power: 20 dBm }
                Far repeater: { kind: repeater, wiring: wired, room: Garage, at: [10, 2], sensitivity: -100 dBm, frequency: 868.3 MHz, radio power: 20 dBm }
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -10 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -60 dBm, frequency: 868.3 MHz }
                Garage receiver: { kind: receiver, wiring: bus, room: Garage, at: [10, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
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
                  walls:
                    - { between: [Hall, Garage], material: metal }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -10 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
                Near repeater: { kind: repeater, wiring: wired, room: Hall, at: [4, 2], sensitivity: -100 dBm, frequency: 868.3 MHz, radio power: 20 dBm }
                Far repeater: { kind: repeater, wiring: wired, room: Garage, at: [10, 2], sensitivity: -100 dBm, frequency: 868.3 MHz, radio power: 20 dBm }
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
      report.judged();
      if (route.repeaters() > 1) {
        List<String> by = route.links().stream().skip(1).map(link -> link.sender().name()).toList();
        report.found(
            PlanPath.of("devices", route.sender().name()),
            "Radio device '"
                + route.sender().name()
                + "' reaches '"
                + route.links().getLast().listener().name()
                + "' only by "
                + Words.names(by)
                + ".",
            "Place one repeater between both, or add a receiver.",
            Involved.devices(List.of(route.sender().name())).and(Involved.devices(by)));
      }
    }
  }
}
