package keenward.core.rules.loops;

import java.util.Optional;
import keenward.core.plan.ContactForm;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** The contact of a zone is stated the other way round than its kind of detector has it. */
public final class ContactFormUnusual implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.LOOPS, 4, "contact-form-unusual", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for intruder detectors and lids with a contact that is open at rest, and for conventional fire"
                  + " detectors with one that is closed at rest.")
          .consequence(
              "The zone is in alarm at rest and at rest in alarm: opening the door gives a restore.")
          .limits(
              "Judges zones that state `contact:` and one kind of detector; a stated `reason:` is taken for an answer."
                  + " Other kinds come both ways.")
          .remedy("State the form that is fitted, or the reason for this one.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store door, response: perimeter, device: contact, wiring: single resistor, resistors: [4.7 kohm], contact: normally-open }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store door, response: perimeter, device: contact, wiring: single resistor, resistors: [4.7 kohm], contact: normally-closed }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store heat, response: fire, device: heat, wiring: single resistor, resistors: [4.7 kohm], contact: normally-open }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Zone zone : input.plan().zones()) {
      Optional<ContactForm> usual = usual(zone);
      if (usual.isEmpty() || !zone.contact().isGiven() || zone.reason().isGiven()) {
        continue;
      }
      report.judged();
      ContactForm stated = zone.contact().orElse(usual.get());
      if (stated != usual.get()) {
        report.found(
            zone.path().then("contact"),
            Words.atStart(zone)
                + " has a contact that is "
                + stated.word()
                + ", and detectors of its kind are "
                + usual.get().word()
                + ".",
            "Look at the detector: state " + usual.get().word() + ", or give the reason.",
            Involved.zone(zone.number()));
      }
    }
  }

  private static Optional<ContactForm> usual(Zone zone) {
    return zone.devices().stream()
                .map(ZoneDevice::kind)
                .map(ContactFormUnusual::usual)
                .distinct()
                .count()
            == 1
        ? usual(zone.devices().getFirst().kind())
        : Optional.empty();
  }

  private static Optional<ContactForm> usual(DeviceKind kind) {
    return switch (kind) {
      case CONTACT, MOTION, DUAL_MOTION, CURTAIN, BEAM, GLASS_BREAK, SHOCK, LID ->
          Optional.of(ContactForm.NORMALLY_CLOSED);
      case SMOKE, HEAT, CALL_POINT -> Optional.of(ContactForm.NORMALLY_OPEN);
      default -> Optional.empty();
    };
  }
}
