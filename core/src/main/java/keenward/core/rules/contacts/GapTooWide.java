package keenward.core.rules.contacts;

import java.util.List;
import java.util.Optional;
import keenward.core.building.contact.FittedContact;
import keenward.core.plan.PlanPath;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Contact and magnet are too far apart to close. */
public final class GapTooWide implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CONTACTS, 1, "gap-too-wide", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Compares the gap between contact and magnet of a shut leaf with the widest at which the contact closes, which"
                  + " on metal is taken as half of what the data sheet states.")
          .consequence("The zone stays open, or drops out whenever the wind moves the leaf.")
          .limits(
              "Needs `magnet: { gap: ... }` of the device and `gaps:` of its type. What metal takes away differs; a"
                  + " spacer gives some of it back. The meter tells at the door.")
          .parameter("share of the gap on metal", "0.5", "")
          .remedy("Bring the magnet nearer, or choose a contact of a wider gap.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door: { kind: door, between: [Store, outside], edge: 1, at: 1 m, width: 0.9 m, material: wood }
              types:
                small contact: { kind: contact, wiring: wired, gaps: { working: 18 mm, release: 25 mm } }
              devices:
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 20 mm, from hinge: 0.8 m } }
              zones:
                1: { name: Store door, response: perimeter, device: Door contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door: { kind: door, between: [Store, outside], edge: 1, at: 1 m, width: 0.9 m, material: wood }
              types:
                small contact: { kind: contact, wiring: wired, gaps: { working: 18 mm, release: 25 mm } }
              devices:
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 8 mm, from hinge: 0.8 m } }
              zones:
                1: { name: Store door, response: perimeter, device: Door contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door: { kind: door, between: [Store, outside], edge: 1, at: 1 m, width: 0.9 m, material: metal }
              types:
                small contact: { kind: contact, wiring: wired, gaps: { working: 18 mm, release: 25 mm } }
              devices:
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 8 mm, from hinge: 0.8 m } }
              zones:
                1: { name: Store door, response: perimeter, device: Door contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (FittedContact contact : FittedContact.all(input.plan())) {
      Optional<Double> gap = contact.gapMetres();
      Optional<Double> working = contact.workingMetres();
      if (gap.isPresent() && working.isPresent()) {
        report.judged();
        if (gap.get() > working.get()) {
          report(contact, gap.get(), working.get(), report);
        }
      }
    }
  }

  private static void report(
      FittedContact contact, double gapMetres, double workingMetres, Report report) {
    report.found(
        PlanPath.of("devices", contact.device().name(), "magnet"),
        "Between '"
            + contact.device().name()
            + "' and its magnet on '"
            + contact.opening().name()
            + "' are "
            + Words.millimetres(gapMetres)
            + ", and it closes up to "
            + Words.millimetres(workingMetres)
            + contact.opening().material().map(each -> " on " + each.word()).orElse("")
            + ".",
        "Bring the magnet nearer, or choose a contact of a wider gap.",
        Involved.devices(List.of(contact.device().name()))
            .and(Involved.openings(List.of(contact.opening().name()))));
  }
}
