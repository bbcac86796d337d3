package keenward.drawing.voltage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import keenward.drawing.load.LoadOptions;
import org.junit.jupiter.api.Test;

class VoltageDrawingTest {

  private static VoltageProfile.Place place(double metres, Double... volts) {
    return new VoltageProfile.Place(metres, Stream.of(volts).map(Optional::of).toList());
  }

  private static String drawn(double arrives, Optional<Double> least) {
    VoltageProfile.Place near = place(0, 12.6, 12.6, 10.5);
    VoltageProfile.Place far = place(40, 12.5, 11.0, arrives);
    return VoltageDrawing.svg(
        new VoltageProfile(
            "Main",
            List.of("full, at rest", "full, in alarm", "low, in alarm"),
            List.of(new VoltageProfile.Stretch(near, far)),
            List.of(new VoltageProfile.Device("Siren", far, least))),
        LoadOptions.phone());
  }

  @Test
  void drawsALineForEachStateAndOneInTheLegend() {
    assertThat(drawn(9, Optional.empty()).split("stroke-dasharray", -1)).hasSize(1 + 6);
  }

  @Test
  void namesADeviceThatGetsTooLittle() {
    assertThat(drawn(8.7, Optional.of(9.0))).contains(">Siren<").contains("Siren, 8.7 V.");
    assertThat(drawn(9.2, Optional.of(9.0))).doesNotContain(">Siren<");
  }

  @Test
  void scalesToWhatItShows() {
    // From 8 to 13 V: a tick each volt; 40 m: a tick each 5 m.
    assertThat(drawn(8.2, Optional.empty()))
        .contains(">8 V<")
        .contains(">13 V<")
        .doesNotContain(">14 V<")
        .contains(">40<");
  }

  @Test
  void drawsWhatHasNoVoltageAsADeviceBelowItsLeast() {
    VoltageProfile.Place near = place(0, 12.6);
    VoltageProfile.Place far = new VoltageProfile.Place(10, List.of(Optional.empty()));
    String svg =
        VoltageDrawing.svg(
            new VoltageProfile(
                "Main",
                List.of("low, in alarm"),
                List.of(new VoltageProfile.Stretch(near, far)),
                List.of(new VoltageProfile.Device("Siren", far, Optional.of(9.0)))),
            LoadOptions.desk());
    assertThat(svg).contains(">Siren<").contains("no voltage").doesNotContain("NaN");
  }
}
