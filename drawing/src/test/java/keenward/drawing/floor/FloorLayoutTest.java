package keenward.drawing.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import keenward.core.building.Building;
import keenward.core.building.FloorGeometry;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Point;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.Involved;
import keenward.core.rules.Severity;
import keenward.drawing.svg.Box;
import org.junit.jupiter.api.Test;

class FloorLayoutTest {

  private static final List<FloorOptions> OPTIONS =
      List.of(
          FloorOptions.desk(),
          FloorOptions.phone(),
          FloorOptions.paper(),
          FloorOptions.desk()
              .lit(Set.of(1, 2), Set.of("Yard door"))
              .marks(
                  List.of(
                      new FloorMark("1", Severity.ERROR, Involved.zones(List.of(1, 2, 18))),
                      new FloorMark(
                          "12", Severity.WARNING, Involved.openings(List.of("Shop window"))),
                      new FloorMark(
                          "3", Severity.ADVICE, Involved.rooms(List.of("Office", "Landing"))))));

  @Test
  void nothingOnTheSampleFloorsCoversAnything() {
    for (SitePlan plan : List.of(SampleSites.bakery(), SampleSites.boathouse())) {
      Building building = Building.of(plan);
      assertThat(building.problems()).isEmpty();
      for (FloorGeometry floor : building.floors()) {
        for (FloorOptions options : OPTIONS) {
          check(plan, building, floor, options, plan.site().name() + " " + floor.name());
        }
      }
    }
  }

  @Test
  void everyZoneNumberOfTheSampleIsOnItsFloor() {
    SitePlan plan = SampleSites.bakery();
    Building building = Building.of(plan);
    for (FloorOptions options : OPTIONS) {
      List<String> numbers = new ArrayList<>();
      for (FloorGeometry floor : building.floors()) {
        FloorLayout layout = FloorLayout.of(plan, building, floor, options);
        layout.chips().stream()
            .filter(chip -> chip.severity().isEmpty())
            .forEach(chip -> numbers.addAll(List.of(chip.text().split(", ", -1))));
      }
      assertThat(numbers)
          .containsExactlyInAnyOrderElementsOf(
              plan.zones().stream().map(zone -> Integer.toString(zone.number())).toList());
    }
  }

  @Test
  void roomNamesStandInTheirRooms() {
    SitePlan plan = SampleSites.bakery();
    Building building = Building.of(plan);
    FloorGeometry floor = building.floors().getFirst();
    FloorLayout layout = FloorLayout.of(plan, building, floor, FloorOptions.desk());
    for (Words words : layout.words()) {
      String text = words.lines().getFirst().text();
      floor
          .findRoom(text)
          .ifPresent(room -> {
            Box box = words.box();
            for (double x : new double[] {box.x(), box.right()}) {
              for (double y : new double[] {box.y(), box.bottom()}) {
                assertThat(room.contains(layout.frame().metres(new Spot(x, y)))).as(text).isTrue();
              }
            }
          });
    }
    assertThat(layout.words().stream().map(words -> words.lines().getFirst().text()))
        .contains(
            "Shop", "Stair hall", "Office", "Bakehouse", "Passage", "Cold store", "Flour store");
  }

  @Test
  void aLongFloorIsTurnedOnANarrowPageAndGetsItsLegendBelowOnAWideOne() {
    SitePlan plan =
        new PlanSketch("Shed")
            .room("Hall", RoomUse.GARAGE, 0, 0, 20, 0, 20, 6, 0, 6)
            .floor("F", DrawingUnit.METRES)
            .device("West", DeviceKind.MOTION, "Hall", 1, 3, 90)
            .device("East", DeviceKind.MOTION, "Hall", 19, 3, 270)
            .plan();
    Building building = Building.of(plan);
    FloorGeometry floor = building.floors().getFirst();
    FloorLayout phone = FloorLayout.of(plan, building, floor, FloorOptions.phone());
    assertThat(phone.frame().turned()).isTrue();
    assertThat(phone.symbols().get(1).centre().y() - phone.symbols().get(0).centre().y())
        .isGreaterThan(500);
    // A detector that looks east looks down the page.
    assertThat(FloorDrawing.svg(plan, building, "F", FloorOptions.phone()).orElseThrow())
        .contains("rotate(180)");
    FloorLayout desk = FloorLayout.of(plan, building, floor, FloorOptions.desk());
    assertThat(desk.frame().turned()).isFalse();
    assertThat(desk.legendBeside()).isFalse();
    assertThat(desk.area().right()).isGreaterThan(900);
    assertThat(
            FloorLayout.of(
                    SampleSites.bakery(),
                    Building.of(SampleSites.bakery()),
                    Building.of(SampleSites.bakery()).floors().getFirst(),
                    FloorOptions.desk())
                .legendBeside())
        .isTrue();
  }

  @Test
  void aTurnedFloorIsNotMirrored() {
    for (boolean turned : new boolean[] {false, true}) {
      Frame frame = new Frame(40, 50, new Point(2, 3), 25, turned);
      Point place = new Point(7.5, -1.25);
      Point back = frame.metres(frame.at(place));
      assertThat(back.distanceMetres(place)).isLessThan(1e-12);
      Spot east = frame.direction(new Point(1, 0));
      Spot north = frame.direction(new Point(0, 1));
      // With y down, a step north stands to the left of a step east.
      assertThat(east.x() * north.y() - east.y() * north.x()).isEqualTo(-1);
      Spot moved = frame.at(new Point(8.5, -1.25));
      assertThat(moved.x() - frame.at(place).x()).isEqualTo(25 * east.x());
      assertThat(moved.y() - frame.at(place).y()).isEqualTo(25 * east.y());
    }
  }

  @Test
  void randomFloorsAreDrawnWithoutCoveringAnything() {
    for (long seed = 1; seed <= 25; seed++) {
      SitePlan plan = randomPlan(new Random(seed));
      Building building = Building.of(plan);
      for (FloorOptions options : List.of(FloorOptions.desk(), FloorOptions.phone())) {
        check(plan, building, building.floors().getFirst(), options, "seed " + seed);
      }
    }
  }

  @Test
  void whatHasNoRoomIsNamedInTheNotes() {
    PlanSketch sketch =
        new PlanSketch("Crowd").room("Cell", RoomUse.OTHER, 0, 0, 30, 0, 30, 1, 0, 1);
    sketch.floor("F", DrawingUnit.METRES);
    for (int i = 1; i <= 200; i++) {
      sketch.device("Device " + i, DeviceKind.MOTION, "Cell", 15, 0.5);
    }
    SitePlan plan = sketch.plan();
    Building building = Building.of(plan);
    FloorGeometry floor = building.floors().getFirst();
    FloorLayout layout = FloorLayout.of(plan, building, floor, FloorOptions.phone());
    check(plan, building, floor, FloorOptions.phone(), "crowd");
    assertThat(layout.symbols().size()).isBetween(10, 199);
    assertThat(layout.notes().getFirst())
        .startsWith("No room on the drawing for: Device ")
        .endsWith("and " + (200 - layout.symbols().size() - 12) + " more");
  }

  private static void check(
      SitePlan plan, Building building, FloorGeometry floor, FloorOptions options, String name) {
    FloorLayout layout = FloorLayout.of(plan, building, floor, options);
    Legend legend = Legend.of(layout, floor, options);
    List<Box> boxes = new ArrayList<>();
    layout.symbols().forEach(symbol -> boxes.add(symbol.box()));
    layout.chips().forEach(chip -> boxes.add(chip.box()));
    layout.words().forEach(words -> boxes.add(words.box()));
    assertThat(boxes).as(name).allSatisfy(box -> assertThat(layout.area().holds(box)).isTrue());
    double size = Legend.textSize(options);
    legend.entries().forEach(entry -> boxes.add(legend.box(entry, size)));
    for (int i = 0; i < boxes.size(); i++) {
      assertThat(boxes.get(i).right()).as(name).isLessThanOrEqualTo(options.widthPixels());
      for (int j = i + 1; j < boxes.size(); j++) {
        assertThat(boxes.get(i).overlaps(boxes.get(j)))
            .as(name + " " + options.widthPixels() + ": " + boxes.get(i) + " " + boxes.get(j))
            .isFalse();
      }
    }
  }

  /** A grid of rooms of unlike sizes with devices strewn over them. */
  private static SitePlan randomPlan(Random random) {
    PlanSketch sketch = new PlanSketch("Random");
    List<RoomUse> uses = List.of(RoomUse.values());
    List<DeviceKind> kinds = List.of(DeviceKind.values());
    int columns = 1 + random.nextInt(4);
    int rows = 1 + random.nextInt(4);
    double[] x = edges(random, columns);
    double[] y = edges(random, rows);
    List<String> rooms = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < rows; j++) {
        String room = "Room number " + (i * rows + j);
        rooms.add(room);
        sketch.room(
            room,
            uses.get(random.nextInt(uses.size())),
            x[i],
            y[j],
            x[i + 1],
            y[j],
            x[i + 1],
            y[j + 1],
            x[i],
            y[j + 1]);
      }
    }
    sketch.floor("F", random.nextBoolean() ? DrawingUnit.METRES : DrawingUnit.FEET);
    int devices = random.nextInt(40);
    for (int number = 1; number <= devices; number++) {
      String device = "Device " + number;
      DeviceKind kind = kinds.get(random.nextInt(kinds.size()));
      String room = rooms.get(random.nextInt(rooms.size()));
      if (random.nextInt(4) == 0) {
        sketch.device(device, kind, room);
      } else {
        sketch.device(
            device,
            kind,
            room,
            random.nextDouble() * x[columns],
            random.nextDouble() * y[rows],
            random.nextInt(360));
      }
      sketch.zone(number, "Zone " + number, ZoneResponse.INSTANT, device);
    }
    return sketch.plan();
  }

  private static double[] edges(Random random, int count) {
    double[] edges = new double[count + 1];
    for (int i = 1; i <= count; i++) {
      edges[i] = edges[i - 1] + 1.2 + random.nextInt(50) / 10.0;
    }
    return edges;
  }
}
