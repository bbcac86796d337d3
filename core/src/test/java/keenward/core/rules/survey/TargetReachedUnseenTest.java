package keenward.core.rules.survey;

import static keenward.core.plan.CoveragePattern.FAN;
import static keenward.core.plan.DeviceKind.BEAM;
import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.OpeningKind.DOORWAY;
import static keenward.core.plan.OpeningKind.WINDOW;
import static keenward.core.plan.RoomUse.OFFICE;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class TargetReachedUnseenTest {

  private final TargetReachedUnseen rule = new TargetReachedUnseen();

  /** A store with a window, and to its right an office that holds the safe. */
  private static PlanBuilder site(OpeningKind between) {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Store", STORE, 0, 0, 8, 6)
                    .room("Office", OFFICE, 8, 0, 12, 6)
                    .target("Office")
                    .opening("Window", WINDOW, "Store", "outside", 1)
                    .opening("Way", between, "Office", "Store", 1));
  }

  @Test
  void findsAWayThatNothingSees() {
    assertThat(findings(rule, site(DOORWAY)))
        .singleElement()
        .asString()
        .startsWith(
            "warning at floors / Ground / openings / Window: From 'Window' one comes into 'Office', a"
                + " target, by a way of ")
        .contains(" m that nothing sees; it takes about ");
  }

  @Test
  void passesAContactOnTheOnlyInnerDoor() {
    PlanBuilder plan =
        site(DOOR)
            .device("Inner", CONTACT, device -> device.room("Office").on("Way"))
            .zone(1, "Inner", PERIMETER, zone -> zone.device("Inner"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }

  /**
   * The strip behind a narrow fan across the store is dark, but nobody comes past the fan itself.
   */
  @Test
  void passesAFanAcrossTheOnlyWayAndFindsOneThatLeavesAPassage() {
    assertThat(findings(rule, fan("5 deg", "20 m"))).isEmpty();
    assertThat(findings(rule, fan("5 deg", "4 m"))).hasSize(1);
  }

  /** From 2.6 m, looking down no steeper than 30 degrees, it sees nobody nearer than 1.7 m. */
  @Test
  void findsAWayUnderTheFan() {
    assertThat(
            findings(
                rule,
                site(DOORWAY)
                    .device(
                        "Fan",
                        MOTION,
                        device ->
                            device
                                .room("Store")
                                .at(4, 5.9)
                                .bearing("180 deg")
                                .covers(FAN, "20 m", "5 deg")
                                .looksDown("30 deg")
                                .mountedAt("2.6 m"))
                    .zone(1, "Fan", INSTANT, zone -> zone.device("Fan"))))
        .hasSize(1);
  }

  /** A beam across the store, from wall to wall or with a gap that a person passes. */
  @Test
  void passesABeamAcrossTheOnlyWay() {
    assertThat(findings(rule, beam(5.9))).isEmpty();
    assertThat(findings(rule, beam(4))).hasSize(1);
  }

  private static PlanBuilder beam(double endsAt) {
    return site(DOORWAY)
        .device("Beam", BEAM, device -> device.room("Store").at(4, 0.1).endsAt(4, endsAt))
        .zone(1, "Beam", INSTANT, zone -> zone.device("Beam"));
  }

  /** A fan from the middle of the north wall of the store, down to the south. */
  private static PlanBuilder fan(String angle, String range) {
    return site(DOORWAY)
        .device(
            "Fan",
            MOTION,
            device -> device.room("Store").at(4, 5.9).bearing("180 deg").covers(FAN, range, angle))
        .zone(1, "Fan", INSTANT, zone -> zone.device("Fan"));
  }

  @Test
  void doesNotAssessWhereAZoneMayWatchTheWay() {
    PlanBuilder plan = site(DOORWAY).zone(1, "Somewhere", INSTANT);

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(notAssessed(rule, plan))
        .containsExactly(
            "zones / 1: whether 'Office' can be reached unseen: the plan does not say what zone 1"
                + " 'Somewhere' watches; add: room: Hall");
  }

  @Test
  void doesNotAssessWhereAnInnerDoorHasNoPlace() {
    PlanBuilder plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Store", STORE, 0, 0, 8, 6)
                        .room("Office", OFFICE, 8, 0, 12, 6)
                        .target("Office")
                        .opening("Window", WINDOW, "Store", "outside", 1)
                        .opening("Way", DOORWAY, "Office", "Store", 4));

    assertThat(run(rule, plan).judgedCount()).isZero();
    assertThat(notAssessed(rule, plan))
        .containsExactly(
            "floors: whether 'Office' can be reached unseen: 'Way' has no place in the drawing; add:"
                + " edge: 1, at: 1 m, width: 0.9 m");
  }

  @Test
  void takesADetectorOfUnknownViewToSeeItsRoom() {
    PlanBuilder plan =
        site(DOORWAY)
            .device("Motion", MOTION, device -> device.room("Office"))
            .zone(1, "Office", INSTANT, zone -> zone.device("Motion"));

    assertThat(findings(rule, plan)).isEmpty();
  }
}
