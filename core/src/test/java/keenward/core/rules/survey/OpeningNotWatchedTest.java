package keenward.core.rules.survey;

import static keenward.core.plan.CoveragePattern.CEILING;
import static keenward.core.plan.CoveragePattern.FAN;
import static keenward.core.plan.CoveragePattern.SPHERE;
import static keenward.core.plan.DeviceKind.BEAM;
import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.CURTAIN;
import static keenward.core.plan.DeviceKind.GLASS_BREAK;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.OpeningKind.DOORWAY;
import static keenward.core.plan.OpeningKind.WINDOW;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.plan.ZoneResponse.TECHNICAL;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpeningNotWatchedTest {

  private final OpeningNotWatched rule = new OpeningNotWatched();

  /**
   * A store of 5 m x 4 m with one window in its south wall, from x 0.5 m to 1.4 m, middle (0.95,
   * 0).
   */
  private static PlanBuilder store() {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Store", STORE, 0, 0, 5, 4)
                    .opening("Window", WINDOW, "Store", "outside", 1));
  }

  private static PlanBuilder with(DeviceKind kind, Consumer<DeviceBuilder> details) {
    return store()
        .device("Detector", kind, details)
        .zone(1, "Store", INSTANT, zone -> zone.device("Detector"));
  }

  @Test
  void findsAnOpeningThatNothingWatches() {
    assertThat(findings(rule, store()))
        .containsExactly(
            "error at floors / Ground / openings / Window: Nothing watches 'Window' (a window of 'Store'),"
                + " which can be reached from outside.");
  }

  /** The inside of the window is at (0.95, 0.3). */
  @ParameterizedTest
  @CsvSource({"0.5, true", "1.2, true", "1.4, false", "3, false"})
  void countsABeamThatPassesCloseBy(double y, boolean isWatched) {
    assertThat(findings(rule, with(BEAM, beam -> beam.room("Store").at(0.1, y).endsAt(4.9, y))))
        .hasSize(isWatched ? 0 : 1);
  }

  @Test
  void passesADetectorOnItOrOneThatGuardsItsPane() {
    assertThat(findings(rule, with(CONTACT, device -> device.on("Window")))).isEmpty();
    assertThat(findings(rule, with(GLASS_BREAK, device -> device.room("Store")))).isEmpty();
    assertThat(findings(rule, with(CURTAIN, device -> device.room("Store")))).isEmpty();
    assertThat(run(rule, with(CONTACT, device -> device.on("Window"))).judgedCount()).isEqualTo(1);
  }

  /**
   * The place inside the window is (0.95, 0.3): from (4.98, 3.98), clear of the walls, at 227.6
   * degrees and 5.46 m: atan2(-4.03, -3.68), hypot(4.03, 3.68).
   */
  @ParameterizedTest
  @CsvSource({
    "225 deg, 90 deg, 12 m, true",
    "183 deg, 90 deg, 12 m, true",
    "182 deg, 90 deg, 12 m, false",
    "273 deg, 90 deg, 12 m, false",
    "225 deg, 90 deg, 5.5 m, true",
    "225 deg, 90 deg, 5.4 m, false"
  })
  void looksAtRangeAndAngleOfAMotionDetector(
      String bearing, String angle, String range, boolean sees) {
    PlanBuilder plan =
        with(
            MOTION,
            device -> device.room("Store").at(5, 4).bearing(bearing).covers(FAN, range, angle));

    assertThat(findings(rule, plan)).hasSize(sees ? 0 : 1);
    if (!sees) {
      assertThat(findings(rule, plan))
          .containsExactly(
              "warning at floors / Ground / openings / Window: Nothing is fitted on 'Window', and"
                  + " 'Detector' in 'Store' looks past it.");
    }
  }

  /** From (4.9, 3.9) to (0.95, 0.3) it is 5.3 m. */
  @ParameterizedTest
  @CsvSource({"6 m, true", "5 m, false"})
  void hearsAPaneWithinTheRangeOfAGlassBreakDetector(String range, boolean hears) {
    PlanBuilder plan =
        with(
            GLASS_BREAK,
            device -> device.room("Store").at(4.9, 3.9).covers(SPHERE, range, "360 deg"));

    assertThat(findings(rule, plan)).hasSize(hears ? 0 : 1);
    if (!hears) {
      assertThat(findings(rule, plan)).first().asString().endsWith("does not reach it.");
    }
  }

  /**
   * A doorway at x 5, from y 2.6 to 3.5. The line from (6, 3.7) to the place inside the window
   * crosses x 5 at y 3.0, that from (6, 1) at y 0.9.
   */
  @ParameterizedTest
  @CsvSource({"3.7, true", "1, false"})
  void countsADetectorThatSeesInFromAnotherRoom(double y, boolean sees) {
    PlanBuilder plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Store", STORE, 0, 0, 5, 4)
                        .room("Hall", STORE, 5, 0, 9, 4)
                        .opening("Window", WINDOW, "Store", "outside", 1)
                        .opening("Way", DOORWAY, "Hall", "Store", 1))
            .device(
                "Detector",
                MOTION,
                device ->
                    device.room("Hall").at(6, y).bearing("236 deg").covers(FAN, "12 m", "90 deg"))
            .zone(1, "Hall", INSTANT, zone -> zone.device("Detector"));

    assertThat(findings(rule, plan)).hasSize(sees ? 0 : 1);
  }

  @Test
  void takesWhatIsNotStatedToReach() {
    assertThat(findings(rule, with(MOTION, device -> device.room("Store")))).isEmpty();
    assertThat(
            findings(
                rule,
                with(
                    MOTION,
                    device ->
                        device
                            .room("Store")
                            .at(4, 3)
                            .bearing("0 deg")
                            .covers(CEILING, "6 m", "90 deg"))))
        .isEmpty();
  }

  @Test
  void countsNoDetectorBehindATechnicalZone() {
    PlanBuilder plan =
        store()
            .device("Contact", CONTACT, device -> device.on("Window"))
            .zone(1, "Vent", TECHNICAL, zone -> zone.device("Contact"));

    assertThat(findings(rule, plan)).hasSize(1);
  }

  @Test
  void leavesExcludedUnreachableAndUpperOpeningsAlone() {
    PlanBuilder plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Store", STORE, 0, 0, 5, 4)
                        .excluded("Barred", WINDOW, "Store", "barred")
                        .unreachable("High", WINDOW, "Store"))
            .floor(
                "Upper",
                floor ->
                    floor
                        .room("Loft", STORE, 0, 0, 5, 4)
                        .opening("Loft window", WINDOW, "Loft", "outside", 1)
                        .opening("Loft door", DOOR, "Loft", "outside", 1));

    assertThat(run(rule, plan).judgedCount()).isZero();
  }

  @Test
  void doesNotAssessWhereAZoneMayGuardItOrNoOpeningIsKnown() {
    PlanBuilder further =
        store()
            .device("Contact", CONTACT, device -> device.inputs("contact", "terminals").on("Door"))
            .zone(1, "Kitchen", PERIMETER, zone -> zone.device("Contact", "terminals"));
    assertThat(findings(rule, further)).isEmpty();
    assertThat(notAssessed(rule, further))
        .containsExactly(
            "floors / Ground / openings / Window: whether anything watches 'Window', since the plan does"
                + " not say what zone 1 'Kitchen' guards; add: devices: { Window contact: { kind: contact,"
                + " opening: Window } }");
    assertThat(notAssessed(rule, PlanBuilder.site()))
        .singleElement()
        .asString()
        .startsWith("floors: whether every opening is watched");
  }
}
