package keenward.core.rules.contacts;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.OpeningKind.DOUBLE_DOOR;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class ContactRulesTest {

  /** A store with a door 0.9 m wide. */
  private static PlanBuilder store(OpeningKind kind, Consumer<DeviceBuilder> contact) {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor.room("Store", STORE, 0, 0, 5, 4).opening("Door", kind, "Store", "outside", 1))
        .device(
            "Contact",
            CONTACT,
            device -> contact.accept(device.room("Store").on("Door").inputs("contact", "lid")))
        .zone(1, "Door", PERIMETER, zone -> zone.device("Contact"));
  }

  /**
   * sqrt(25² - 7²) = 24 mm at 0.18 m from the hinge: the edge at 0.9 m stands open five times that.
   */
  @Test
  void findsAHandsBreadthAsAdviceAndAPersonsAsWarning() {
    OpensBeforeItTrips rule = new OpensBeforeItTrips();

    assertThat(
            findings(
                rule,
                store(DOOR, contact -> contact.gaps("18 mm", "25 mm").magnet("7 mm", "0.18 m"))))
        .containsExactly(
            "advice at devices / Contact / magnet: 'Door' stands open 120 mm before 'Contact' trips; a"
                + " hand is through by then.");
    assertThat(
            findings(
                rule,
                store(DOOR, contact -> contact.gaps("18 mm", "25 mm").magnet("7 mm", "0.08 m"))))
        .containsExactly(
            "warning at devices / Contact / magnet: 'Door' stands open 270 mm before 'Contact' trips; a"
                + " person is through by then.");
    assertThat(
            findings(
                rule,
                store(DOOR, contact -> contact.gaps("18 mm", "60 mm").magnet("7 mm", "0.04 m"))))
        .containsExactly(
            "warning at devices / Contact / magnet: 'Door' opens to a right angle, and 'Contact' does"
                + " not trip; a person is through by then.");
    assertThat(
            findings(
                rule,
                store(DOOR, contact -> contact.gaps("18 mm", "25 mm").magnet("7 mm", "0.8 m"))))
        .isEmpty();
  }

  @Test
  void asksOnceForWhatThePlanDoesNotSayOfAllContacts() {
    PlanBuilder plan = store(DOOR, contact -> contact.gaps("18 mm", "25 mm"));

    assertThat(run(new OpensBeforeItTrips(), plan).judgedCount()).isZero();
    assertThat(notAssessed(new OpensBeforeItTrips(), plan))
        .containsExactly(
            "devices / Contact: how far 'Door' stands open before its contact trips, since the plan"
                + " does not say how they are fitted; add: magnet: { gap: 6 mm, from hinge: 0.8 m }");
  }

  @Test
  void takesALidOfTheSameContactForNoSecondLeaf() {
    PlanBuilder plan =
        store(DOUBLE_DOOR, contact -> {})
            .zone(2, "Lid", PERIMETER, zone -> zone.device("Contact", "lid"));

    assertThat(findings(new SecondLeafNotWatched(), plan))
        .containsExactly(
            "advice at floors / Ground / openings / Door: 'Door' has two leaves, and zone 1 'Door' a"
                + " contact on one.");
  }

  @Test
  void comparesTheGapWithTheWorkingGap() {
    assertThat(
            findings(
                new GapTooWide(),
                store(DOOR, contact -> contact.gaps("18 mm", "25 mm").magnet("19 mm", "0.8 m"))))
        .containsExactly(
            "warning at devices / Contact / magnet: Between 'Contact' and its magnet on 'Door' are 19"
                + " mm, and it closes up to 18 mm.");
  }
}
