package keenward.core.rules.wireless;

import java.util.List;
import keenward.core.plan.Device;
import keenward.core.plan.PlanPath;
import keenward.core.quantities.Frequency;
import keenward.core.radio.RadioAssessment;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A radio device sends where nothing listens. */
public final class FrequencyNobodyHears implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 4, "frequency-nobody-hears", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for radio devices whose frequency is that of no receiver and no repeater.")
          .consequence("The device was bought for another band: it never reports anything.")
          .limits(
              "Frequencies more than 0.1 MHz apart count as different. Needs place and sensitivity of all "
                  + "receivers too; a receiver that hops over a band states the frequency of its devices.")
          .parameter("same frequency", "0.1", "MHz")
          .remedy("Fit a device, or a receiver, of the other band.")
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 433.92 MHz, radio power: 10 dBm, check-in: 60 min }
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 60 min }
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.35 MHz, radio power: 10 dBm, check-in: 60 min }
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
    report.judged(radio.routes().size() + radio.onNoFrequency().size());
    for (Device device : radio.onNoFrequency()) {
      report.found(
          PlanPath.of("devices", device.name()),
          "Radio device '"
              + device.name()
              + "' sends at "
              + device.traits().frequency().map(Frequency::written).orElse("")
              + ", where no receiver and no repeater listens.",
          "Fit one of the receiver's band, or a receiver of its band.",
          Involved.devices(List.of(device.name())));
    }
  }
}
