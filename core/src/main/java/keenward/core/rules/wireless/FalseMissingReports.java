package keenward.core.rules.wireless;

import java.util.List;
import keenward.core.plan.PlanPath;
import keenward.core.radio.Supervision;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A good radio device is called missing too often. */
public final class FalseMissingReports implements Rule {

  private static final double MOST_A_YEAR = 1;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 7, "false-missing-reports", Severity.WARNING)
          .source(Source.memory("Rayleigh fading and pure ALOHA", "", "textbook formulas"))
          .source(Source.practice())
          .purpose(
              "Reckons from margin, check-in and the other devices on the frequency how often a year a radio "
                  + "device that is well would be reported missing.")
          .consequence("Each report costs a visit, and teaches people to ignore the next.")
          .limits(
              "Each message is taken as lost or heard by itself, by Rayleigh fading about the reckoned or "
                  + "measured margin and by meeting others (docs/methods/radio.md). Interference from strangers is "
                  + "left out.")
          .parameter("false reports of one device", "1", "a year")
          .parameter("length of a message", "0.1", "s")
          .remedy("Better the margin, or let more check-ins pass before a device is missing.")
          .broken(
              """
              keenward: 1
              site: { name: Example, premises: dwelling }
              panel: { radio supervision: 3 h }
              floors:
                Ground:
                  wall material: brick
                  rooms:
                    Hall:   { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -34 dBm, check-in: 60 min, measured level: -90 dBm }
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
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -34 dBm, check-in: 60 min, measured level: -90 dBm }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
              zones:
                1: { name: Window, response: instant, device: Window contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: { name: Example, premises: dwelling }
              panel: { radio supervision: 3 h }
              floors:
                Ground:
                  wall material: brick
                  rooms:
                    Hall:   { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -34 dBm, check-in: 60 min, measured level: -83 dBm }
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
    for (Supervision each : input.radio().supervised()) {
      report.judged();
      // With fewer check-ins than one the device is always missing: RAD-06 says so.
      if (each.messages() > 0 && each.falseReportsAYear() > MOST_A_YEAR) {
        String device = each.device().name();
        report.found(
            PlanPath.of("devices", device),
            "Radio device '"
                + device
                + "' would be called missing about "
                + Math.round(Math.ceil(each.falseReportsAYear()))
                + " times a year though it is well: "
                + Words.number(Math.round(1000 * each.lostShare()) / 10.0)
                + " % of its messages get lost, and "
                + Words.count(each.messages(), "message")
                + " in a row make it missing.",
            "Better its margin, or choose a longer `radio supervision:` or a shorter check-in.",
            Involved.devices(List.of(device)));
      }
    }
  }
}
