package keenward.drawing.discharge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.drawing.load.LoadOptions;
import org.junit.jupiter.api.Test;

class DischargeDrawingTest {

  private static String drawn(double wantedHours, boolean isEarly) {
    return DischargeDrawing.svg(
        new DischargeProfile(
            "Main",
            List.of(new DischargeProfile.Point(0, 12.6), new DischargeProfile.Point(20, 10.5)),
            10.5,
            wantedHours,
            List.of(new DischargeProfile.Mark(10, 11.55, "Siren dies after 10 h", isEarly))),
        LoadOptions.phone());
  }

  @Test
  void numbersWhatHappensAndTellsIt() {
    assertThat(drawn(0, false))
        .contains(">1</text>", ">Siren dies after 10 h</text>", "<desc", ">hours since the mains")
        .contains(">switched off at 10.5 V<")
        .doesNotContain("wanted to last");
  }

  @Test
  void showsHowLongItIsWantedToLastEvenWhenThatIsLonger() {
    // 60 h from 50 to 342 px of 360.
    assertThat(drawn(60, false)).contains(">wanted to last 60 h<", "M342,26v200", ">60<");
  }

  @Test
  void drawsTheCurveToScale() {
    // 10 to 13 V over 200 px from 26 px down: 12.6 V at 52.67, 10.5 V at 192.67.
    assertThat(drawn(0, false)).contains("d=\"M50,52.67L342,192.67\"");
  }

  @Test
  void anEarlyFailureIsHeavierAsWellAsRed() {
    assertThat(drawn(0, true)).contains("stroke-width=\"2.4\"").contains("--drawing-error");
    assertThat(drawn(0, false)).doesNotContain("stroke-width=\"2.4\"");
  }
}
