package keenward.drawing.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LoadDrawingTest {

  private static final SupplyLoad MAIN =
      new SupplyLoad(
          "Main",
          420,
          1180,
          Optional.of(1200.0),
          Optional.of(16.9),
          Optional.of(7.0),
          Optional.of(false),
          false);
  private static final SupplyLoad LOFT =
      new SupplyLoad(
          "Loft <box>",
          60,
          95.4,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          true);

  @Test
  void barsAreInProportion() {
    String svg = LoadDrawing.svg(List.of(MAIN), LoadOptions.paper());
    // 680 px less two margins of 16, 60 for names and 108 for values leave 480 px for the greatest
    // value, 1200 mA.
    assertThat(svg).contains("width=\"168\" height=\"13\"").contains("width=\"472\" height=\"13\"");
    // And for 16.9 Ah.
    assertThat(svg)
        .contains("width=\"480\" height=\"13\"")
        .contains("width=\"198.82\" height=\"13\"");
  }

  @Test
  void valuesAreWrittenAndWhatIsMissingSaysSo() {
    String svg = LoadDrawing.svg(List.of(MAIN, LOFT), LoadOptions.paper());
    assertThat(svg)
        .contains(">420 mA<", ">1180 mA<", ">rated 1200 mA<", ">16.9 Ah<", ">7 Ah, too small<")
        .contains(">Loft &lt;box&gt;<", ">≥ 60 mA<", ">≥ 95 mA<", ">not assessed<", ">not stated<")
        .contains(
            "Main: standby 420 mA, alarm 1180 mA, battery needed 16.9 Ah, fitted 7 Ah. Loft &lt;box&gt;:"
                + " standby at least 60 mA, alarm at least 95 mA, battery needed not assessed, fitted not stated.")
        .doesNotContain("var(");
  }

  @Test
  void noSuppliesAndNoLoadsStillDraw() {
    assertThat(LoadDrawing.svg(List.of(), LoadOptions.phone())).contains("load-drawing");
    SupplyLoad idle =
        new SupplyLoad(
            "Idle",
            0,
            0,
            Optional.empty(),
            Optional.of(0.0),
            Optional.empty(),
            Optional.empty(),
            false);
    assertThat(LoadDrawing.svg(List.of(idle), LoadOptions.phone()))
        .contains(">0 mA<")
        .doesNotContain("NaN");
  }
}
