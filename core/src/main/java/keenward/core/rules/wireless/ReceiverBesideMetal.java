package keenward.core.rules.wireless;

import java.util.List;
import keenward.core.plan.PlanPath;
import keenward.core.radio.RadioAssessment;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A receiver hangs on or beside a metal wall. */
public final class ReceiverBesideMetal implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 10, "receiver-beside-metal", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for receivers and repeaters nearer than one wavelength to a wall of metal or insulated "
                  + "panel.")
          .consequence(
              "Metal beside an aerial detunes it and throws a shadow: whole rooms are heard weakly, whatever "
                  + "the sum says.")
          .limits("Walls only; cabinets, foil insulation and cable trays are not in the plan.")
          .parameter("distance", "1", "wavelength")
          .remedy("Hang the receiver a wavelength or more away from metal.")
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [5.8, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
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
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [5.8, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
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
                Window contact: { kind: contact, wiring: radio, serial: "61 2208 16", room: Garage, at: [11, 2], frequency: 868.3 MHz, radio power: 10 dBm, check-in: 60 min }
                Receiver: { kind: receiver, wiring: bus, room: Hall, at: [5.6, 2], sensitivity: -100 dBm, frequency: 868.3 MHz }
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
    report.judged(radio.listeners());
    for (RadioAssessment.NearMetal near : radio.nearMetal()) {
      if (near.metres() < near.wavelengthMetres()) {
        String listener = near.listener().name();
        report.found(
            PlanPath.of("devices", listener),
            "'"
                + listener
                + "' hangs "
                + Words.millimetres(near.metres())
                + " from "
                + near.what()
                + "; one wavelength is "
                + Words.millimetres(near.wavelengthMetres())
                + ".",
            "Hang it a wavelength or more away from metal.",
            Involved.devices(List.of(listener)));
      }
    }
  }
}
