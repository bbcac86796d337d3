package keenward.core.radio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import keenward.core.building.Building;
import keenward.core.building.plane.Polygons;
import keenward.core.electrical.Explained;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.FloorBuilder;
import keenward.core.plan.Material;
import keenward.core.plan.MissingFact;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Point;
import keenward.core.plan.PremisesKind;
import keenward.core.plan.RoomUse;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.quantities.Frequency;
import org.junit.jupiter.api.Test;

/** Links, routes and maps. Losses of slabs were computed apart with the formula of P.2040. */
class RadioAssessmentTest {

  private static final Frequency BAND = new Frequency(868.3, "868.3 MHz");

  private static RadioAssessment assess(PlanBuilder builder) {
    SitePlan plan = builder.build();
    return RadioAssessment.of(plan, Building.of(plan), Settings.of(plan, Map.of()));
  }

  private static PlanBuilder house(Consumer<FloorBuilder> more) {
    return PlanBuilder.site()
        .premises(PremisesKind.DWELLING)
        .panel(panel -> panel.radioSupervision("2 h"))
        .floor(
            "Ground",
            floor ->
                more.accept(
                    floor
                        .walls(Material.BRICK)
                        .room("Hall", RoomUse.HALL, 0, 0, 6, 4)
                        .room("Living", RoomUse.LIVING, 6, 0, 12, 4)));
  }

  private static Consumer<DeviceBuilder> sender(String room, double x, double y) {
    return device ->
        device.radio("1").on(BAND).sends("10 dBm").checksIn("15 min").room(room).at(x, y);
  }

  private static Consumer<DeviceBuilder> receiver(String room, double x, double y) {
    return device -> device.bus().on(BAND).hears("-105 dBm").room(room).at(x, y);
  }

  private static PlanBuilder oneLink(Consumer<FloorBuilder> more) {
    return house(more)
        .device("Window", DeviceKind.CONTACT, sender("Living", 11, 2))
        .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2));
  }

  /** The worked example of docs/methods/radio.md. */
  @Test
  void reckonsTheWorkedExample() {
    RadioAssessment radio = assess(oneLink(floor -> {}));
    RadioLink link = radio.links().getFirst();
    assertThat(link.path().freeSpaceDecibels()).isCloseTo(51.22, within(0.005));
    assertThat(link.path().obstacleDecibels()).isCloseTo(BRICK, within(0.001));
    assertThat(link.level()).isCloseTo(10 - 51.22 - BRICK, within(0.006));
    assertThat(link.marginDecibels()).isCloseTo(115 - 51.22 - BRICK, within(0.006));
    assertThat(link.isEnough()).isTrue();
    // 20 log 868.3 + 33 log 10 - 28
    assertThat(link.secondOpinionMarginDecibels()).isCloseTo(115 - 63.77, within(0.005));
    assertThat(link.lines())
        .extracting(Explained::text)
        .startsWith(
            "Loss of the distance: 20 log(4 pi x 10 m / 0.345 m) = 51.2 dB (ITU-R P.525)",
            "Through wall of brick: brick 110 mm = 3.3 dB (ITU-R P.2040-3, slab, extended below its range)");
    assertThat(radio.notAssessed()).isEmpty();
  }

  private static final double BRICK = 3.266;
  private static final double WOOD = 0.582;
  private static final double CHIPBOARD = 0.941;
  private static final double BOARD = 0.299;

  @Test
  void aDoorLosesWhatItsLeafLosesAndADoorwayNothing() {
    // From the corner of the hall the opening lies from 0.5 m to 1.4 m along the wall.
    for (OpeningKind kind : List.of(OpeningKind.DOOR, OpeningKind.DOORWAY)) {
      RadioAssessment radio =
          assess(
              house(floor -> floor.opening("Way", kind, "Hall", "Living"))
                  .device("Window", DeviceKind.CONTACT, sender("Living", 11, 0.9))
                  .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 0.9)));
      assertThat(radio.links().getFirst().path().obstacleDecibels())
          .isCloseTo(kind == OpeningKind.DOOR ? WOOD : 0, within(0.001));
    }
  }

  @Test
  void passesOverALowWallAndNotThroughAHighOne() {
    assertThat(
            assess(oneLink(floor -> floor.lowWall("Hall", "Living", "1.5 m")))
                .links()
                .getFirst()
                .path()
                .crossed())
        .isEmpty();
    assertThat(
            assess(oneLink(floor -> floor.lowWall("Hall", "Living", "2.1 m")))
                .links()
                .getFirst()
                .path()
                .crossed())
        .hasSize(1);
  }

  @Test
  void metalTakesItsStatedLoss() {
    assertThat(
            assess(oneLink(floor -> floor.wall("Hall", "Living", Material.METAL)))
                .links()
                .getFirst()
                .path()
                .obstacleDecibels())
        .isEqualTo(30);
  }

  @Test
  void passesFloorsAndOnlyTheWallsOfTheStoreysItIsIn() {
    RadioAssessment radio =
        assess(
            house(floor -> {})
                .floor(
                    "Upper",
                    floor ->
                        floor
                            .walls(Material.METAL)
                            .room("Landing", RoomUse.LANDING, 0, 0, 11.5, 4)
                            .room("Bed", RoomUse.BEDROOM, 11.5, 0, 12, 4))
                .device("Window", DeviceKind.CONTACT, sender("Landing", 11, 2))
                .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2)));
    RadioPath path = radio.links().getFirst().path();
    // The ground floor ends 0.5 m above the receiver, 2.8 m lies between both: at x = 2.8 it is
    // left, short of
    // the brick wall at x = 6.
    assertThat(path.floors()).isEqualTo(1);
    assertThat(path.metres()).isCloseTo(Math.hypot(10, 2.8), within(1e-9));
    assertThat(path.obstacleDecibels()).isCloseTo(CHIPBOARD + BOARD, within(0.001));
  }

  @Test
  void devicesAtOnePlaceAreReckonedAMetreApart() {
    RadioAssessment radio =
        assess(
            house(floor -> {})
                .device("Window", DeviceKind.CONTACT, sender("Hall", 1, 2))
                .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2)));
    assertThat(radio.links().getFirst().path().freeSpaceDecibels()).isCloseTo(31.22, within(0.005));
  }

  private static List<String> open(PlanBuilder builder) {
    return assess(builder).notAssessed().stream().map(MissingFact::message).toList();
  }

  @Test
  void saysWhatIsMissing() {
    assertThat(
            open(
                house(floor -> floor.room("Loft", RoomUse.LOFT, List.of()))
                    .device("Window", DeviceKind.CONTACT, d -> d.radio("1").room("Loft"))
                    .device(
                        "Odd",
                        DeviceKind.CONTACT,
                        sender("Hall", 1, 1).andThen(d -> d.on(new Frequency(100, "100 MHz"))))))
        .containsExactly(
            "not assessed: whether radio devices are heard, since the plan names no receiver; one inside the panel"
                + " is a device too; add `Radio receiver: { kind: receiver, room: Hall, at: [2, 0.1], sensitivity:"
                + " -105 dBm, frequency: 868.3 MHz }`",
            "not assessed: the plan does not say on which frequency 'Window' works; add `frequency: 868.3 MHz`",
            "not assessed: the plan does not say how strong 'Window' sends; add `radio power: 10 dBm`",
            "not assessed: the plan does not say where 'Window' is: its room is not drawn; add `outline: [[0, 0],"
                + " [4, 0], [4, 3], [0, 3]]`",
            "not assessed: the radio of 'Odd', since its frequency is outside 300 MHz to 6 GHz, where the formulas"
                + " are used; add `frequency: 868.3 MHz`");
    SitePlan bare =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Hall", RoomUse.HALL, 0, 0, 6, 4)
                        .room("Living", RoomUse.LIVING, 6, 0, 12, 4))
            .device("Window", DeviceKind.CONTACT, sender("Living", 11, 2))
            .device("Receiver", DeviceKind.RECEIVER, d -> d.bus().on(BAND).room("Hall").at(1, 2))
            .device("Other", DeviceKind.RECEIVER, receiver("Hall", 1, 2))
            .build();
    RadioAssessment radio =
        RadioAssessment.of(bare, Building.of(bare), Settings.of(bare, Map.of()));
    assertThat(radio.links()).isEmpty();
    assertThat(radio.notAssessed())
        .extracting(MissingFact::lineToAdd)
        .containsExactly("sensitivity: -105 dBm", "wall material: brick");
  }

  @Test
  void takesARepeaterOnlyWhereTheWayWithoutLacksItsReserve() {
    PlanBuilder far =
        house(floor -> floor.wall("Hall", "Living", Material.INSULATED_PANEL))
            .device("Near", DeviceKind.CONTACT, sender("Hall", 2, 2))
            .device(
                "Far",
                DeviceKind.CONTACT,
                sender("Living", 11, 2).andThen(device -> device.sends("0 dBm")))
            .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2))
            .device(
                "Helper",
                DeviceKind.REPEATER,
                device ->
                    device.on(BAND).hears("-105 dBm").sends("14 dBm").room("Living").at(7, 2));
    RadioAssessment radio = assess(far);
    assertThat(radio.routes())
        .extracting(route -> route.sender().name() + " over " + route.repeaters())
        .containsExactly("Near over 0", "Far over 1", "Helper over 0");
    RadioRoute over = radio.routes().get(1);
    // The weaker of both: from the repeater through the panel.
    assertThat(over.weakest().sender().name()).isEqualTo("Helper");
    assertThat(radio.supervised().get(1).marginDecibels()).hasSize(2);
  }

  @Test
  void tellsWhoIsOnAFrequencyOnWhichNothingListens() {
    RadioAssessment radio =
        assess(
            oneLink(floor -> {})
                .device(
                    "Old",
                    DeviceKind.MOTION,
                    sender("Hall", 3, 3).andThen(d -> d.on(new Frequency(433.92, "433.92 MHz"))))
                .device(
                    "Close",
                    DeviceKind.MOTION,
                    sender("Hall", 3, 3).andThen(d -> d.on(new Frequency(868.38, "868.38 MHz")))));
    assertThat(radio.onNoFrequency()).extracting(each -> each.name()).containsExactly("Old");
    assertThat(radio.routes()).hasSize(2);
  }

  @Test
  void seesMetalBesideAReceiver() {
    RadioAssessment radio = assess(oneLink(floor -> floor.wall("Hall", "Living", Material.METAL)));
    assertThat(radio.nearMetal())
        .singleElement()
        .satisfies(near -> {
          assertThat(near.metres()).isCloseTo(5, within(1e-9));
          assertThat(near.wavelengthMetres()).isCloseTo(0.3453, within(0.0001));
        });
  }

  private static PlanBuilder measured(double offset, double scale, int count) {
    PlanBuilder builder =
        house(floor -> {}).device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2));
    for (int i = 0; i < count; i++) {
      double x = i % 2 == 0 ? 7 + 0.7 * i : 2 + 0.5 * i;
      double wall = i % 2 == 0 ? BRICK : 0;
      double level = 10 - FreeSpace.lossDecibels(868.3, x - 1) - scale * wall + offset;
      builder.device(
          "D" + i,
          DeviceKind.CONTACT,
          sender(x > 6 ? "Living" : "Hall", x, 2)
              .andThen(device -> device.measured(Math.round(level * 1000) / 1000.0 + " dBm")));
    }
    return builder;
  }

  @Test
  void refitsTheModelToTheHouse() {
    assertThat(assess(measured(-6, 1, 2)).fit()).isEmpty();
    assertThat(assess(measured(-6, 1, 2)).measurements()).isEqualTo(2);
    Fit offset = assess(measured(-6, 1, 3)).fit().orElseThrow();
    assertThat(offset.offsetDecibels()).isCloseTo(-6, within(0.002));
    assertThat(offset.fitsWalls()).isFalse();
    Fit both = assess(measured(-3, 1.5, 7)).fit().orElseThrow();
    assertThat(both.offsetDecibels()).isCloseTo(-3, within(0.002));
    assertThat(both.wallScale()).isCloseTo(1.5, within(0.002));
    assertThat(both.sigmaDecibels()).isCloseTo(0, within(0.002));
    assertThat(both.measurements()).isEqualTo(7);
    RadioAssessment radio = assess(measured(-3, 1.5, 7));
    RadioLink link = radio.links().getFirst();
    assertThat(link.level()).isCloseTo(link.measured().orElseThrow(), within(0.005));
  }

  /** Residuals 1, -1, 1, -1 about an offset leave sqrt(4 / 3). */
  @Test
  void saysHowFarMeasurementsLieFromTheFit() {
    List<Fit.Sample> samples = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      samples.add(new Fit.Sample(i, -50, i % 2 == 0 ? -49 : -51));
    }
    assertThat(Fit.of(samples).orElseThrow().sigmaDecibels())
        .isCloseTo(Math.sqrt(4.0 / 3), within(1e-9));
    // Walls that would have to gain, or lose threefold, are no fit.
    List<Fit.Sample> odd = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      odd.add(new Fit.Sample(4 * i, -50, -50 - 12 * i));
    }
    assertThat(Fit.of(odd).orElseThrow().fitsWalls()).isFalse();
  }

  /** Every point of random maps against the way walked wall by wall. */
  @Test
  void mapsAgreeWithWaysReckonedOneByOne() {
    long seed = 20_261_127;
    Random random = new Random(seed);
    for (int round = 0; round < 20; round++) {
      SitePlan plan = randomHouse(random).build();
      RadioBuilding building = new RadioBuilding(plan, Building.of(plan));
      Grid grid = new Grid(-1.003, -1.007, 0.4371, 40, 30);
      Spot from =
          building
              .spot(
                  random.nextBoolean() ? "Ground" : "Upper",
                  new Point(15 * random.nextDouble(), 10 * random.nextDouble()),
                  2.4 * random.nextDouble())
              .orElseThrow();
      for (String floor : List.of("Ground", "Upper")) {
        Spot like = building.spot(floor, grid.point(0), 1.2).orElseThrow();
        RadioField field = building.at(868.3);
        double[] losses = field.losses(from, like, grid, Fit.NONE);
        for (int i = 0; i < grid.size(); i++) {
          Point point = grid.point(i);
          Spot to = new Spot(like.storey(), point.xMetres(), point.yMetres(), like.zMetres());
          double expected = plainLoss(building, from, to);
          RadioPath path = field.path(from, to);
          if (Double.isNaN(expected)) {
            assertThat(losses[i]).as("seed %d", seed).isNaN();
            assertThat(path.open()).as("seed %d", seed).isPresent();
          } else {
            assertThat(losses[i])
                .as("seed %d, round %d, point %s", seed, round, point)
                .isCloseTo(expected, within(1e-6));
            assertThat(path.freeSpaceDecibels() + path.obstacleDecibels())
                .as("seed %d, round %d, point %s", seed, round, point)
                .isCloseTo(expected, within(1e-6));
          }
        }
      }
    }
  }

  /** Walls met one by one: where two straight pieces cross, and how high the way is there. */
  private static double plainLoss(RadioBuilding building, Spot from, Spot to) {
    double loss =
        FreeSpace.lossDecibels(868.3, Math.max(1, from.metresTo(to)))
            + Math.abs(from.storey() - to.storey())
                * Obstacle.floor(building.premises(), 868.3).decibels();
    for (RadioBuilding.Piece piece : building.pieces()) {
      if (Polygons.cross(from.point(), to.point(), piece.from(), piece.to())) {
        Point met = Polygons.crossing(from.point(), to.point(), piece.from(), piece.to());
        double share = met.distanceMetres(from.point()) / to.point().distanceMetres(from.point());
        double height = from.zMetres() + share * (to.zMetres() - from.zMetres());
        if (height >= piece.lowMetres() && height <= piece.highMetres()) {
          loss +=
              piece
                  .material()
                  .map(material -> Obstacle.of(material, 868.3).decibels())
                  .orElse(Double.NaN);
        }
      }
    }
    return loss;
  }

  private static PlanBuilder randomHouse(Random random) {
    Material[] all = Material.values();
    PlanBuilder builder = PlanBuilder.site();
    for (String name : List.of("Ground", "Upper")) {
      builder.floor(
          name,
          floor -> {
            if (random.nextInt(4) > 0) {
              floor.walls(all[random.nextInt(all.length)]);
            }
            for (int i = 0; i < 12; i++) {
              double x = 4 * (i % 4);
              double y = 3 * (i / 4);
              floor.room(name + i, RoomUse.OFFICE, x, y, x + 4, y + 3);
              if (i % 4 > 0) {
                String before = name + (i - 1);
                switch (random.nextInt(4)) {
                  case 0 -> floor.wall(before, name + i, all[random.nextInt(all.length)]);
                  case 1 -> floor.lowWall(before, name + i, "1.4 m");
                  case 2 -> floor.opening(name + "way" + i, OpeningKind.DOORWAY, before, name + i);
                  default -> {}
                }
              }
            }
          });
    }
    return builder;
  }

  @Test
  void aDeviceAboveTheCeilingHangsUnderIt() {
    PlanBuilder builder =
        house(floor -> {})
            .device(
                "Window",
                DeviceKind.CONTACT,
                sender("Living", 11, 2).andThen(device -> device.mountedAt("9 m")))
            .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2));
    RadioPath path = assess(builder).links().getFirst().path();
    assertThat(path.crossed()).hasSize(1);
    assertThat(path.metres()).isCloseTo(10, within(0.02));
  }

  @Test
  void shuttersAreMetalAndDoorsWoodWhereThePlanDoesNotSay() {
    RadioAssessment radio =
        assess(
            house(floor -> floor.opening("Way", OpeningKind.ROLLER_SHUTTER, "Hall", "Living"))
                .device("Window", DeviceKind.CONTACT, sender("Living", 11, 0.9))
                .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 0.9)));
    assertThat(radio.links().getFirst().path().obstacleDecibels()).isEqualTo(30);
  }

  /** Office at 900 MHz: 9, 19, 24 dB (P.1238-8, from memory and seen in open-source code). */
  @Test
  void floorsLoseWhatTheTableSays() {
    assertThat(SiteGeneral.OFFICE.floorDecibels(868.3, 0)).isZero();
    assertThat(SiteGeneral.OFFICE.floorDecibels(868.3, 1)).isEqualTo(9);
    assertThat(SiteGeneral.OFFICE.floorDecibels(868.3, 2)).isEqualTo(19);
    assertThat(SiteGeneral.OFFICE.floorDecibels(868.3, 3)).isEqualTo(24);
    assertThat(SiteGeneral.OFFICE.floorDecibels(1900, 3)).isEqualTo(23);
    assertThat(SiteGeneral.COMMERCIAL.floorDecibels(1900, 2)).isEqualTo(9);
    assertThat(SiteGeneral.RESIDENTIAL.floorDecibels(1900, 2)).isEqualTo(8);
    assertThat(SiteGeneral.RESIDENTIAL.coefficient(2440)).isEqualTo(28);
    assertThat(SiteGeneral.OFFICE.coefficient(2440)).isEqualTo(30);
    assertThat(SiteGeneral.COMMERCIAL.coefficient(900)).isEqualTo(20);
  }

  /** Walls of 0, 4, 8 ... dB that take 1.5 times as much, and residuals 1, -1, -1, 1 twice. */
  @Test
  void twoFittedFiguresCostTwoDegreesOfFreedom() {
    double[] residuals = {1, -1, -1, 1, 1, -1, -1, 1};
    List<Fit.Sample> samples = new ArrayList<>();
    for (int i = 0; i < residuals.length; i++) {
      samples.add(new Fit.Sample(4 * i, -50, -50 - 2 - 0.5 * 4 * i + residuals[i]));
    }
    Fit fit = Fit.of(samples).orElseThrow();
    assertThat(fit.wallScale()).isCloseTo(1.5, within(1e-9));
    assertThat(fit.offsetDecibels()).isCloseTo(-2, within(1e-9));
    assertThat(fit.sigmaDecibels()).isCloseTo(Math.sqrt(8.0 / 6), within(1e-9));
  }

  @Test
  void aMapIsNoBetterThanWhatARepeaterPassesOn() {
    RadioAssessment radio =
        assess(
            house(floor -> floor.wall("Hall", "Living", Material.INSULATED_PANEL))
                .device(
                    "Far",
                    DeviceKind.CONTACT,
                    sender("Living", 11, 2).andThen(device -> device.sends("0 dBm")))
                .device("Strong", DeviceKind.CONTACT, sender("Living", 11, 3))
                .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2))
                .device(
                    "Helper",
                    DeviceKind.REPEATER,
                    device ->
                        device.on(BAND).hears("-105 dBm").sends("4 dBm").room("Living").at(7, 2)));
    double onward =
        radio.routes().stream()
            .filter(route -> route.sender().name().equals("Helper"))
            .findFirst()
            .orElseThrow()
            .marginDecibels();
    RadioMap map = RadioMap.of(radio).getFirst();
    assertThat(map.weakest().name()).isEqualTo("Far");
    for (int i = 0; i < map.grid().size(); i++) {
      if (map.grid().point(i).xMetres() > 6.2) {
        assertThat(map.marginDecibels(i).orElseThrow()).isLessThanOrEqualTo(onward + 1e-9);
      }
    }
  }

  @Test
  void aRepeaterIsNoBetterThanItsWayOn() {
    RadioAssessment radio =
        assess(
            house(floor -> floor.wall("Hall", "Living", Material.INSULATED_PANEL))
                .device(
                    "Window",
                    DeviceKind.CONTACT,
                    sender("Living", 11, 2).andThen(device -> device.sends("-5 dBm")))
                .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2)));
    RadioMap.BestPlace best = RadioMap.bestRepeater(radio).orElseThrow();
    // -5 dBm and -105 dBm leave 100 dB; one of the two ways goes through the panel, which takes 40
    // dB.
    assertThat(best.leastMarginDecibels())
        .isLessThanOrEqualTo(60 - FreeSpace.lossDecibels(868.3, 1));
    assertThat(best.leastMarginDecibels())
        .isGreaterThan(radio.routes().getFirst().marginDecibels());
  }

  @Test
  void findsTheBestPlaceOfAReceiver() {
    RadioAssessment radio =
        assess(
            house(floor -> floor.wall("Hall", "Living", Material.METAL))
                .device("West", DeviceKind.CONTACT, sender("Hall", 0.3, 2))
                .device("East", DeviceKind.CONTACT, sender("Hall", 5.7, 2))
                .device("Receiver", DeviceKind.RECEIVER, receiver("Living", 11, 2)));
    RadioMap.BestPlace best = RadioMap.bestReceiver(radio).orElseThrow();
    assertThat(best.room()).isEqualTo("Hall");
    assertThat(best.at().distanceMetres(new Point(3, 2))).isLessThan(0.5);
    assertThat(best.leastMarginDecibels())
        .isCloseTo(115 - FreeSpace.lossDecibels(868.3, 2.8), within(0.8));
  }

  @Test
  void proposesARepeaterOnlyWhereOneIsNeeded() {
    assertThat(RadioMap.bestRepeater(assess(oneLink(floor -> {})))).isEmpty();
    RadioAssessment radio =
        assess(
            house(floor -> floor.wall("Hall", "Living", Material.INSULATED_PANEL))
                .device(
                    "Window",
                    DeviceKind.CONTACT,
                    sender("Living", 11, 2).andThen(device -> device.sends("-5 dBm")))
                .device("Receiver", DeviceKind.RECEIVER, receiver("Hall", 1, 2)));
    RadioMap.BestPlace best = RadioMap.bestRepeater(radio).orElseThrow();
    assertThat(best.leastMarginDecibels())
        .isGreaterThan(radio.routes().getFirst().marginDecibels());
  }

  @Test
  void mapsTheRoomsAndNothingElse() {
    RadioMap map =
        RadioMap.of(assess(oneLink(floor -> floor.wall("Hall", "Living", Material.METAL))))
            .getFirst();
    Grid grid = map.grid();
    int count = 0;
    for (int i = 0; i < grid.size(); i++) {
      Point point = grid.point(i);
      double margin = map.marginDecibels(i).orElseThrow();
      double reckoned =
          115
              - FreeSpace.lossDecibels(868.3, Math.max(1, point.distanceMetres(new Point(1, 2))))
              - (point.xMetres() > 6 ? 30 : 0);
      assertThat(margin).isCloseTo(reckoned, within(1e-6));
      count++;
    }
    assertThat(count).isEqualTo(60 * 20);
    assertThat(map.weakest().name()).isEqualTo("Window");
  }

  /** 8 check-ins of 15 min in 2 h; margin 10 dB loses 1 - exp(-0.1) = 9.52 %. */
  @Test
  void reckonsFalseReports() {
    RadioAssessment radio = assess(oneLink(floor -> {}));
    assertThat(radio.supervised())
        .singleElement()
        .satisfies(each -> {
          assertThat(each.messages()).isEqualTo(8);
          assertThat(each.collidedShare()).isZero();
        });
    Supervision alone =
        new Supervision(radio.links().getFirst().sender(), 900, 7200, 0, List.of(10.0));
    assertThat(alone.lostShare()).isCloseTo(0.095_162_6, within(1e-7));
    assertThat(alone.falseReportsAYear())
        .isCloseTo(35_064 * 0.904_837_4 * Math.pow(0.095_162_6, 8), within(1e-7));
    Supervision crowded =
        new Supervision(radio.links().getFirst().sender(), 900, 7200, 0.5, List.of(10.0, 10.0));
    assertThat(crowded.collidedShare()).isCloseTo(1 - Math.exp(-0.1), within(1e-9));
    assertThat(crowded.lostShare()).isCloseTo(1 - Math.exp(-0.3), within(1e-9));
    assertThat(crowded.airSecondsAnHour()).isCloseTo(0.4, within(1e-12));
  }
}
