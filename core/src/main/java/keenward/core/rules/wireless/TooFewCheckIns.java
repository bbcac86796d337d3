package keenward.core.rules.wireless;

import java.util.List;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Setting;
import keenward.core.radio.RadioAssessment;
import keenward.core.radio.Supervision;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A radio device is called missing after one or two lost messages. */
public final class TooFewCheckIns implements Rule {

  private static final int LEAST_MESSAGES = 3;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 6, "too-few-check-ins", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Counts how often a radio device checks in within `radio supervision:`. Fewer than three times "
                  + "is a warning, less than once an error.")
          .consequence(
              "Two lost messages, which happen to every radio device, and the keypad calls a good device "
                  + "missing; soon nobody believes it.")
          .limits(
              "Devices whose check-in and route are known. The period itself is judged by RAD-02.")
          .parameter("check-ins in the supervision time", "3", "")
          .remedy(
              "Choose a longer `radio supervision:`, as far as the grade allows, or a shorter check-in.")
          .broken(
              """
              keenward: 1
              site: { name: Example, premises: dwelling }
              panel: { radio supervision: 2 h }
              floors:
                Ground:
                  wall material: brick
                  rooms:
                    Hall:   { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
              zones:
                1: { name: Window, response: instant, device: Window contact }
              """)
          .mended(
              """
              keenward: 1
              site: { name: Example, premises: dwelling }
              panel: { radio supervision: 2 h }
              floors:
                Ground:
                  wall material: brick
                  rooms:
                    Hall:   { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 15 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
              zones:
                1: { name: Window, response: instant, device: Window contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: { name: Example, premises: dwelling }
              panel: { radio supervision: 2 h }
              floors:
                Ground:
                  wall material: brick
                  rooms:
                    Hall:   { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 40 min }
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
    RadioAssessment radio = input.radio();
    radio.checkInsNotAssessed().stream()
        .findFirst()
        .ifPresent((MissingFact missing) -> report.notAssessed(missing));
    for (Supervision each : radio.supervised()) {
      report.judged();
      if (each.messages() < LEAST_MESSAGES) {
        String device = each.device().name();
        report.found(
            each.messages() == 0 ? Severity.ERROR : Severity.WARNING,
            PlanPath.of("devices", device),
            "Radio device '"
                + device
                + "' checks in "
                + (each.messages() == 0
                    ? "not once within"
                    : "only " + (each.messages() == 1 ? "once" : "twice") + " within")
                + " the supervision time of "
                + input.settings().get(Setting.RADIO_SUPERVISION).words()
                + ".",
            "Choose a longer `radio supervision:`, as far as the grade allows, or a shorter check-in.",
            Involved.devices(List.of(device)));
      }
    }
  }
}
