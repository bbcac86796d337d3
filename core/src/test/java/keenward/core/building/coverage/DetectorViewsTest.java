package keenward.core.building.coverage;

import static keenward.core.plan.CoveragePattern.FAN;
import static keenward.core.plan.CoveragePattern.SPHERE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.Consumer;
import keenward.core.building.Building;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.FloorBuilder;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Point;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneResponse;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DetectorViewsTest {

  private static DetectorViews views(
      DeviceKind kind, Consumer<FloorBuilder> more, Consumer<DeviceBuilder> device) {
    SitePlan plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor -> {
                  floor.room("Hall", RoomUse.HALL, 0, 0, 10, 6);
                  more.accept(floor);
                })
            .device("Eye", kind, eye -> device.accept(eye.room("Hall").at(0.1, 3)))
            .zone(1, "Hall", ZoneResponse.INSTANT, zone -> zone.device("Eye"))
            .build();
    return DetectorViews.of(plan, Building.of(plan));
  }

  private static DetectorViews motion(Consumer<DeviceBuilder> device) {
    return views(
        DeviceKind.MOTION,
        hall -> {},
        eye -> device.accept(eye.bearing("90 deg").covers(FAN, "12 m", "80 deg")));
  }

  /** The right triangle from the lens down to the head of a walker of 1.6 m. */
  @ParameterizedTest
  @CsvSource({
    "2.2, 45, 0.6",
    "2.6, 45, 1.0",
    "2.2, 30, 1.0392",
    "1.6, 30, 0",
    "1.2, 30, 0",
    "2.2, 90, 0",
    "2.2, 0, Infinity"
  })
  void nobodyIsSeenUnderTheLowestLineOfSight(double height, double down, double blind) {
    double metres = DetectorViews.blindMetres(height, down);
    if (Double.isInfinite(blind)) {
      assertThat(metres).isInfinite();
    } else {
      assertThat(metres).isCloseTo(blind, within(1e-4));
    }
  }

  @Test
  void takesOffTheZoneUnderADetectorWhereThePlanSaysEnough() {
    DetectorViews views = motion(eye -> eye.mountedAt("2.4 m").looksDown("45 deg"));

    assertThat(views.views().getFirst().seen().blindMetres()).isCloseTo(0.8, within(1e-9));
    assertThat(views.views().getFirst().seen().sees(new Point(0.6, 3))).isFalse();
    assertThat(views.views().getFirst().seen().sees(new Point(1.2, 3))).isTrue();
    assertThat(views.notAssessed()).isEmpty();
  }

  @Test
  void saysWhatIsMissingForIt() {
    assertThat(motion(eye -> eye.mountedAt("2.4 m")).notAssessed())
        .extracting(MissingFact::lineToAdd)
        .containsExactly("coverage: { looks down: 50 deg }");
    DetectorViews views = motion(eye -> eye.looksDown("45 deg"));
    assertThat(views.notAssessed())
        .extracting(MissingFact::lineToAdd)
        .containsExactly("height: 2.2 m");
    assertThat(views.views().getFirst().seen().blindMetres()).isZero();
  }

  @Test
  void aBeamIsALineBetweenItsEnds() {
    BeamLine line =
        views(DeviceKind.BEAM, hall -> {}, beam -> beam.endsAt(9.9, 3)).beams().getFirst();

    assertThat(line.from()).isEqualTo(new Point(0.1, 3));
    assertThat(line.to()).isEqualTo(new Point(9.9, 3));
    assertThat(line.isClear()).isTrue();
    assertThat(views(DeviceKind.BEAM, hall -> {}, beam -> {}).notAssessed())
        .extracting(MissingFact::lineToAdd)
        .containsExactly("ends at: [6, 0.1]");
  }

  @ParameterizedTest
  @CsvSource({"2 m,,false", "1 m,,true", "1 m,0.6 m,false", "0.5 m,0.6 m,true", "2 m,0.6 m,false"})
  void isBrokenByWhatIsAsHighAsItself(String shelf, @Nullable String height, boolean isClear) {
    DetectorViews views =
        views(
            DeviceKind.BEAM,
            hall -> hall.furniture("Shelf", shelf, 4, 2, 5, 4),
            beam -> {
              beam.endsAt(9.9, 3);
              if (height != null) {
                beam.mountedAt(height);
              }
            });

    assertThat(views.beams().getFirst().isClear()).isEqualTo(isClear);
  }

  @Test
  void aBeamDoesNotPassAWall() {
    DetectorViews views =
        views(
            DeviceKind.BEAM,
            floor -> floor.room("Store", RoomUse.STORE, 10, 0, 14, 6),
            beam -> beam.endsAt(13.9, 3));

    assertThat(views.beams().getFirst().isClear()).isFalse();
  }

  @Test
  void hearsWithinRangeAndInLineOfSight() {
    DetectorViews views =
        views(
            DeviceKind.GLASS_BREAK,
            hall -> hall.furniture("Shelf", "2 m", 4, 2, 5, 4),
            ear -> ear.covers(SPHERE, "7 m", "360 deg"));

    assertThat(views.views()).isEmpty();
    assertThat(views.hearings().getFirst().seen().sees(new Point(3, 3))).isTrue();
    assertThat(views.hearings().getFirst().seen().sees(new Point(6, 3))).isFalse();
    assertThat(views.hearings().getFirst().seen().sees(new Point(9, 0.5))).isFalse();
  }
}
