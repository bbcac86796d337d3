package keenward.core.rules.contacts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.contact.ContactTrip;
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

/** A leaf opens wide before its contact tells of it. */
public final class OpensBeforeItTrips implements Rule {

  /** A person squeezes through. Common practice, no source. */
  private static final double PERSON_METRES = 0.25;

  /** A hand comes through, with a second magnet in it. Common practice, no source. */
  private static final double HAND_METRES = 0.1;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CONTACTS, 2, "opens-before-it-trips", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "From the gaps of the contact and its distance from the hinge, reckons how far the leaf stands open when it"
                  + " trips, and looks for more than a person, or as advice a hand, needs.")
          .consequence("Somebody is in before the zone opens, or it never does.")
          .limits(
              "Needs `magnet:` of the device, `gaps:` of its type and the width of the opening. The magnet is taken to move"
                  + " square to the gap, which errs to the late side (docs/methods/contacts.md). Leaves that bend, and slats"
                  + " that are lifted, open farther.")
          .parameter("a person", "0.25", "m")
          .parameter("a hand", "0.1", "m")
          .remedy("Fit the contact at the lock side, within 150 mm of the edge of the leaf.")
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
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 5 mm, from hinge: 0.06 m } }
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
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 5 mm, from hinge: 0.8 m } }
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
                    Store door: { kind: sliding-door, between: [Store, outside], edge: 1, at: 1 m, width: 0.9 m, material: wood }
              types:
                small contact: { kind: contact, wiring: wired, gaps: { working: 18 mm, release: 25 mm } }
              devices:
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 5 mm, from hinge: 0.06 m } }
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
    List<FittedContact> open = new ArrayList<>();
    for (FittedContact contact : FittedContact.all(input.plan())) {
      switch (contact.trips()) {
        case FittedContact.Trips.NotKnown() -> open.add(contact);
        case FittedContact.Trips.Never() -> {
          report.judged();
          report(contact, Optional.empty(), report);
        }
        case FittedContact.Trips.At(ContactTrip trip) -> {
          report.judged();
          if (trip.edgeMetres() > HAND_METRES) {
            report(contact, Optional.of(trip), report);
          }
        }
      }
    }
    if (!open.isEmpty()) {
      notAssessed(open, report);
    }
  }

  private static void report(FittedContact contact, Optional<ContactTrip> trip, Report report) {
    boolean isWide = trip.filter(each -> each.edgeMetres() <= PERSON_METRES).isEmpty();
    report.found(
        isWide ? Severity.WARNING : Severity.ADVICE,
        PlanPath.of("devices", contact.device().name(), "magnet"),
        "'"
            + contact.opening().name()
            + trip.map(each ->
                    "' stands open "
                        + Words.millimetres(each.edgeMetres())
                        + " before '"
                        + contact.device().name()
                        + "' trips")
                .orElse(
                    "' opens to a right angle, and '" + contact.device().name() + "' does not trip")
            + (isWide ? "; a person is through by then." : "; a hand is through by then."),
        "Fit it at the lock side, within 150 mm of the edge of the leaf.",
        Involved.devices(List.of(contact.device().name()))
            .and(Involved.openings(List.of(contact.opening().name()))));
  }

  private static void notAssessed(List<FittedContact> open, Report report) {
    FittedContact first = open.getFirst();
    report.notAssessed(
        PlanPath.of("devices", first.device().name()),
        "how far "
            + (open.size() == 1
                ? "'" + first.opening().name() + "' stands"
                : open.size() + " openings stand")
            + " open before "
            + (open.size() == 1 ? "its contact trips" : "their contacts trip")
            + ", since the plan does not say how they are fitted",
        first.device().traits().gaps().isGiven()
            ? "magnet: { gap: 6 mm, from hinge: 0.8 m }"
            : "gaps: { working: 18 mm, release: 25 mm }");
  }
}
