package keenward.core.rules.wireless;

import java.util.List;
import java.util.Optional;
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
import keenward.core.rules.Words;

/** A measured level lies close to what the receiver needs. */
public final class MeasuredLevelWeak implements Rule {

  private static final double LEAST_DECIBELS = 10;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 8, "measured-level-weak", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for measured levels less than 10 dB over the sensitivity of the receiver or repeater that "
                  + "hears the device best.")
          .consequence(
              "People, doors and weather move a level by as much: the device is lost now and then.")
          .limits("One measurement of one day; measure with doors shut and people about.")
          .parameter("measured margin", "10", "dB")
          .remedy(
              "Move the device or the receiver by half a metre and measure again; else a repeater.")
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -30 dBm, check-in: 60 min, measured level: -91 dBm }
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -30 dBm, check-in: 60 min, measured level: -76 dBm }
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: -30 dBm, check-in: 60 min, measured level: -89 dBm }
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
      Optional<Double> margin = link.measuredMarginDecibels();
      if (margin.isEmpty()) {
        continue;
      }
      report.judged();
      if (margin.get() < LEAST_DECIBELS) {
        String device = link.sender().name();
        report.found(
            PlanPath.of("devices", device, "measured level"),
            "'"
                + link.listener().name()
                + "' was seen to hear '"
                + device
                + "' only "
                + Words.number(margin.get())
                + " dB over its sensitivity; 10 dB are usual.",
            "Move one of them by half a metre and measure again; else add a repeater.",
            Involved.devices(List.of(device, link.listener().name())));
      }
    }
  }
}
