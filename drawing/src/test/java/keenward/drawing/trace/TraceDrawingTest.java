package keenward.drawing.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import keenward.core.plan.Backdrop;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.PicturePoint;
import keenward.core.plan.Point;
import keenward.core.plan.Room;
import keenward.core.quantities.Length;
import org.junit.jupiter.api.Test;

class TraceDrawingTest {

  private static final TracePicture PICTURE =
      new TracePicture("data:image/png;base64,AAAA", 800, 500, "px");

  /** Two points 600 px apart on a level line, 12 m in the building. */
  private static Floor floor(DrawingUnit unit, Fact<Length> distance) {
    return new Floor(
        "Ground",
        unit,
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        List.of(
            new Room(
                "Hall <1>",
                Fact.missing(),
                Fact.missing(),
                Fact.missing(),
                List.of(
                    new Point(0, 0), new Point(6.096, 0), new Point(6.096, 4), new Point(0, 4)))),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Fact.of(
            new Backdrop(
                "ground.png",
                1,
                List.of(new PicturePoint(100, 400), new PicturePoint(700, 400)),
                distance,
                Fact.missing(),
                Fact.missing())));
  }

  private static double number(String svg, String attribute) {
    Matcher found = Pattern.compile(attribute + "=\"([^\"]+)\"").matcher(svg);
    assertThat(found.find()).as(attribute).isTrue();
    return Double.parseDouble(found.group(1));
  }

  @Test
  void placesThePictureSoThatItsPointsLieWhereTheyAreInTheBuilding() {
    String svg =
        TraceDrawing.svg(floor(DrawingUnit.METRES, Fact.of(new Length(12, "12 m"))), PICTURE);

    // 800 px are 16 m wide; 960 px less 46 on the left and 20 on the right leave 894 px for them.
    double pixels = number(svg, "data-pixels-right");
    assertThat(pixels).isCloseTo(894 / 16.0, within(1e-6));
    assertThat(number(svg, "data-pixels-down")).isEqualTo(-pixels);
    // The first point is 100 px right, 400 px down: 2 m and 8 m from the upper left corner.
    assertThat(number(svg, "data-zero-x")).isCloseTo(46 + 2 * pixels, within(1e-6));
    assertThat(number(svg, "data-zero-y")).isCloseTo(24 + 8 * pixels, within(1e-6));
    assertThat(svg)
        .contains("data-unit=\"m\"", ">Hall &lt;1&gt;<", "data-corners=\"0,0 6.096,0 6.096,4 0,4\"")
        .contains("translate(46 24) rotate(0) scale(1.1175)", "12 m apart");
  }

  @Test
  void countsInTheFeetOfTheFloor() {
    String svg =
        TraceDrawing.svg(floor(DrawingUnit.FEET, Fact.of(new Length(12, "12 m"))), PICTURE);

    assertThat(svg).contains("data-unit=\"ft\"", "data-corners=\"0,0 20,0 20,13.1233596");
    assertThat(number(svg, "data-pixels-right")).isCloseTo(894 / 16.0 * 0.3048, within(1e-6));
  }

  @Test
  void countsInThePicturesOwnUnitsWhileNothingIsMeasured() {
    String svg = TraceDrawing.svg(floor(DrawingUnit.METRES, Fact.missing()), PICTURE);

    assertThat(svg)
        .contains("data-unit=\"px\"", "data-zero-x=\"46\"", "data-zero-y=\"24\"", ">400<")
        .doesNotContain("data-corners", "Hall");
    assertThat(number(svg, "data-pixels-down")).isCloseTo(894 / 800.0, within(1e-6));
  }

  /** Lines a thousandth of a pixel apart would take for ever. */
  @Test
  void drawsFewLinesAtAnyScale() {
    for (String distance : List.of("1 mm", "100 km")) {
      String svg =
          TraceDrawing.svg(
              floor(
                  DrawingUnit.METRES,
                  Fact.of(new Length(distance.equals("1 mm") ? 0.001 : 100_000, distance))),
              PICTURE);

      assertThat(svg.split("<line", -1)).hasSizeBetween(10, 60);
    }
  }
}
