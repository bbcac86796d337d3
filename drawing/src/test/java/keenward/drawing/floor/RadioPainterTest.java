package keenward.drawing.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import keenward.core.building.Building;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Material;
import keenward.core.plan.Point;
import keenward.core.plan.RoomUse;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.radio.RadioAssessment;
import keenward.core.radio.RadioMap;
import org.junit.jupiter.api.Test;

class RadioPainterTest {

  /** The receiver is at (1, 3); the contact gives it 5 dB in hand at 9 m behind the wall. */
  private static SitePlan plan(double powerDecibelMilliwatts) {
    return new PlanSketch("Sketch")
        .room("Hall", RoomUse.HALL, 0, 0, 6, 0, 6, 6, 0, 6)
        .room("Store", RoomUse.STORE, 6, 0, 12, 0, 12, 6, 6, 6)
        .wall("Hall", "Store", Material.METAL)
        .wall("Hall", "outside", Material.BRICK)
        .wall("Store", "outside", Material.BRICK)
        .floor("Ground", DrawingUnit.METRES)
        .radio("Contact", DeviceKind.CONTACT, "Store", 10, 3, powerDecibelMilliwatts)
        .radio("Receiver", DeviceKind.RECEIVER, "Hall", 1, 3, -95)
        .plan();
  }

  private static String draw(SitePlan plan) {
    Building building = Building.of(plan);
    List<RadioMap> maps =
        RadioMap.of(RadioAssessment.of(plan, building, Settings.of(plan, Map.of())));
    return FloorDrawing.svg(plan, building, "Ground", FloorOptions.desk().radio(maps))
        .orElseThrow();
  }

  @Test
  void tintsWhatIsHeardAndHatchesWhatIsNot() {
    // 95 - 10 dB: 33 dB are left up to about 10 m in sight; 30 dB of metal leave 0 to 23 dB.
    assertThat(draw(plan(-10)))
        .contains("radio: 33 dB in hand or more", "radio: 0 to 23 dB, may fail")
        .contains("class=\"radio-ample\"", "class=\"radio-weak\"")
        .doesNotContain("radio-nothing");
    assertThat(draw(plan(-25))).contains("radio: not heard", "class=\"radio-nothing\"");
  }

  @Test
  void tintsEachPointByItsOwnMargin() {
    SitePlan plan = plan(-10);
    Building building = Building.of(plan);
    Frame frame =
        FloorLayout.of(
                plan, building, building.findFloor("Ground").orElseThrow(), FloorOptions.desk())
            .frame();
    String svg = draw(plan);
    int at = svg.indexOf("class=\"radio-ample\"");
    String path = svg.substring(svg.indexOf("d=\"", at) + 3, svg.indexOf("\" fill", at));
    String[] corners = path.replace("Z", "").split("[ML]", -1);
    assertThat(corners.length).isGreaterThan(4);
    for (int i = 1; i < corners.length; i++) {
      String[] numbers = corners[i].split(",", -1);
      Point point =
          frame.metres(new Spot(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
      assertThat(point.xMetres()).isLessThan(6.11);
    }
  }

  @Test
  void drawsNothingWithoutAMap() {
    SitePlan plan = plan(-10);
    assertThat(
            FloorDrawing.svg(plan, Building.of(plan), "Ground", FloorOptions.desk()).orElseThrow())
        .doesNotContain("radio-", "radio: ");
  }
}
