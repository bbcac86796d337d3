package keenward.drawing.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.building.Building;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.coverage.FloorCoverage;
import keenward.core.building.coverage.Gap;
import keenward.core.building.coverage.RoomCoverage;
import keenward.core.building.plane.SeenArea;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Point;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;

class CoveragePainterTest {

  private static final SitePlan PLAN =
      new PlanSketch("Sketch")
          .room("Hall", RoomUse.HALL, 0, 0, 8, 0, 8, 6, 0, 6)
          .floor("Ground", DrawingUnit.METRES)
          .device("Eye", DeviceKind.MOTION, "Hall", 0.2, 0.2)
          .zone(1, "Hall motion", ZoneResponse.FOLLOWER, "Eye")
          .plan();

  private static final List<Point> TRIANGLE =
      List.of(new Point(1, 1), new Point(5, 1), new Point(1, 4));

  private static CoverageMap map(boolean watched) {
    SeenArea seen =
        new SeenArea(
            new Point(0.2, 0.2),
            0,
            Math.PI / 2,
            List.of(
                new SeenArea.Piece(0, Math.PI / 2, new Point(4.2, 0.2), new Point(0.2, 4.2), true)),
            0);
    return new CoverageMap(
        new DetectorViews(
            List.of(new DetectorView(PLAN.devices().getFirst(), "Ground", "Hall", seen)),
            List.of(),
            List.of(),
            List.of()),
        List.of(
            new FloorCoverage(
                "Ground",
                List.of(
                    new RoomCoverage(
                        "Hall",
                        48,
                        12,
                        0,
                        watched ? List.of("Eye") : List.of(),
                        List.of(new Gap(6, List.of(TRIANGLE), List.of("A & B", "C"))))))));
  }

  private static String draw(FloorOptions options) {
    return FloorDrawing.svg(PLAN, Building.of(PLAN), "Ground", options).orElseThrow();
  }

  @Test
  void tintsWhatIsSeenAndHatchesWhatIsNotAndExplainsBoth() {
    String svg = draw(FloorOptions.desk().coverage(map(true)));
    assertThat(svg)
        .contains(
            "seen by Eye",
            "unseen, 6 m2, between A &amp; B and C",
            "seen by a motion",
            "a person can stand here");
  }

  @Test
  void hatchesInsideTheGapOnly() {
    FloorOptions options = FloorOptions.desk();
    Building building = Building.of(PLAN);
    Frame frame =
        FloorLayout.of(PLAN, building, building.findFloor("Ground").orElseThrow(), options).frame();
    String svg = draw(options.coverage(map(true)));
    int at = svg.indexOf("unseen, 6 m2");
    String path = svg.substring(svg.indexOf("d=\"", at) + 3, svg.indexOf("\" fill", at));
    String[] strokes = path.substring(path.indexOf('Z') + 2).split("M", -1);
    assertThat(strokes.length).isGreaterThan(5);
    for (String stroke : strokes) {
      for (String end : stroke.split("L", -1)) {
        String[] numbers = end.split(",", -1);
        Point point =
            frame.metres(new Spot(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
        // The triangle is x >= 1, y >= 1, 3 x + 4 y <= 19.
        assertThat(point.xMetres()).isGreaterThan(0.999);
        assertThat(point.yMetres()).isGreaterThan(0.999);
        assertThat(3 * point.xMetres() + 4 * point.yMetres()).isLessThan(19.01);
      }
    }
  }

  @Test
  void hatchesNothingInARoomThatNothingWatches() {
    assertThat(draw(FloorOptions.desk().coverage(map(false)))).doesNotContain("unseen");
  }

  @Test
  void drawsNoneOfItUnlessAsked() {
    assertThat(draw(FloorOptions.desk())).doesNotContain("seen");
  }
}
