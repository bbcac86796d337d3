package keenward.core.building;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Fact;
import keenward.core.plan.Material;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.Point;
import org.junit.jupiter.api.Test;

class BuildingTest {

  private static final String OUT = "outside";

  /** A shop of 6 m by 5 m with a workshop of 5 m by 5 m to its right. */
  private static FloorSketch twoRooms() {
    return new FloorSketch()
        .room("Shop", 0, 0, 6, 0, 6, 5, 0, 5)
        .room("Workshop", 6, 0, 11, 0, 11, 5, 6, 5);
  }

  @Test
  void aSharedEdgeIsOneInnerWallAndTheRestAreOuterWalls() {
    FloorGeometry floor = twoRooms().floor("Ground").build().floors().getFirst();
    assertThat(floor.walls()).hasSize(7);
    assertThat(floor.wallsBetween("Workshop", "Shop"))
        .singleElement()
        .satisfies(wall -> {
          assertThat(wall.room()).isEqualTo("Shop");
          assertThat(wall.start()).isEqualTo(new Point(6, 0));
          assertThat(wall.end()).isEqualTo(new Point(6, 5));
          assertThat(wall.startFrom("Workshop")).isEqualTo(new Point(6, 5));
        });
    assertThat(floor.wallsBetween("Shop", OUT))
        .extracting(WallSegment::edge)
        .containsExactly(1, 2, 3);
    assertThat(floor.findRoom("Workshop").orElseThrow().areaSquareMetres()).isEqualTo(25);
  }

  @Test
  void edgesCloserThanTheSnapDistanceAreOneWall() {
    // The gap of 4 cm is within the usual 5 cm; at 6 cm the rooms stand apart.
    FloorGeometry near =
        new FloorSketch()
            .room("A", 0, 0, 4, 0, 4, 3, 0, 3)
            .room("B", 4.04, 0.02, 9, 0, 9, 3, 4.03, 3)
            .floor("F")
            .build()
            .floors()
            .getFirst();
    FloorGeometry far =
        new FloorSketch()
            .room("A", 0, 0, 4, 0, 4, 3, 0, 3)
            .room("B", 4.06, 0, 9, 0, 9, 3, 4.06, 3)
            .floor("F")
            .build()
            .floors()
            .getFirst();
    assertThat(near.wallsBetween("A", "B")).hasSize(1);
    assertThat(far.wallsBetween("A", "B")).isEmpty();
  }

  @Test
  void aCornerInTheMiddleOfAnEdgeSplitsTheWallWithoutBendingIt() {
    // C stands on top of A and B, which meet in the middle of its lower edge and are drawn 3 cm too
    // low.
    FloorGeometry floor =
        new FloorSketch()
            .room("C", 0, 3, 8, 3, 8, 6, 0, 6)
            .room("A", 0, 0, 4, 0, 4, 2.97, 0, 2.97)
            .room("B", 4, 0, 8, 0, 8, 2.97, 4, 2.97)
            .floor("F")
            .build()
            .floors()
            .getFirst();
    assertThat(floor.wallsBetween("C", "A").getFirst().lengthMetres()).isEqualTo(4);
    assertThat(floor.wallsBetween("C", "B").getFirst().lengthMetres()).isEqualTo(4);
    assertThat(floor.wallsBetween("A", "B")).hasSize(1);
    assertThat(floor.walls()).filteredOn(wall -> !wall.isOuter()).hasSize(3);
  }

  @Test
  void aCornerOfTheOutlineInAStraightWallMakesNoSecondWall() {
    FloorGeometry floor =
        new FloorSketch()
            .room("A", 2, 0, 4, 0, 4, 3, 0, 3, 0, 0)
            .floor("F")
            .build()
            .floors()
            .getFirst();
    // The first corner lies in the middle of the lower wall, which is still number 1.
    assertThat(floor.wallsBetween("A", OUT)).hasSize(4);
    assertThat(floor.wallsBetween("A", OUT).getFirst().start()).isEqualTo(new Point(0, 0));
    assertThat(floor.wallsBetween("A", OUT).getFirst().end()).isEqualTo(new Point(4, 0));
  }

  @Test
  void aRoomThatTouchesAnotherTwiceNeedsAnEdgeNumberToPickTheWall() {
    // Hall wraps round the store: they share two walls.
    FloorSketch sketch =
        new FloorSketch()
            .room("Hall", 0, 0, 6, 0, 6, 6, 3, 6, 3, 3, 0, 3)
            .room("Store", 0, 3, 3, 3, 3, 6, 0, 6);
    Building vague =
        sketch
            .opening("Door", OpeningKind.DOOR, "Store", "Hall", Fact.missing(), 1, 0.9)
            .floor("F")
            .build();
    assertThat(vague.problems())
        .singleElement()
        .satisfies(problem -> {
          assertThat(problem.path().toString()).isEqualTo("floors / F / openings / Door");
          assertThat(problem.what()).contains("share 2 walls");
          assertThat(problem.remedy()).contains("edge: 2 from [3, 3] to [3, 6]");
        });
    Building exact =
        new FloorSketch()
            .room("Hall", 0, 0, 6, 0, 6, 6, 3, 6, 3, 3, 0, 3)
            .room("Store", 0, 3, 3, 3, 3, 6, 0, 6)
            .opening("Door", OpeningKind.DOOR, "Store", "Hall", Fact.of(2), 1, 0.9)
            .opening("Same wall", OpeningKind.DOORWAY, "Hall", "Store", Fact.of(1), 0.1, 0.8)
            .floor("F")
            .build();
    assertThat(exact.problems()).isEmpty();
    OpeningPlace door = exact.floors().getFirst().findOpening("Door").orElseThrow();
    assertThat(door.middle()).isEqualTo(new Point(3, 4.45));
    // From the hall the same wall runs from [3, 6] to [3, 3] and is its first one with the store.
    OpeningPlace same = exact.floors().getFirst().findOpening("Same wall").orElseThrow();
    assertThat(same.wall()).isEqualTo(door.wall());
    assertThat(same.middle().yMetres()).isCloseTo(5.5, within(1e-12));
  }

  @Test
  void leftAndRightOfAnOpeningAreSeenFromItsFirstRoom() {
    Building building =
        twoRooms()
            .opening("Front", OpeningKind.DOOR, "Shop", OUT, Fact.of(1), 1, 1)
            .opening("Way", OpeningKind.DOOR, "Workshop", "Shop", Fact.missing(), 0.5, 1)
            .floor("G")
            .build();
    FloorGeometry floor = building.floors().getFirst();
    // Facing south from the shop, east is on the left hand.
    OpeningPlace front = floor.findOpening("Front").orElseThrow();
    assertThat(front.leftJamb()).isEqualTo(new Point(2, 0));
    assertThat(front.rightJamb()).isEqualTo(new Point(1, 0));
    assertThat(front.inward().yMetres()).isEqualTo(1);
    // Facing west from the workshop, south is on the left hand; its outline comes down that wall.
    OpeningPlace way = floor.findOpening("Way").orElseThrow();
    assertThat(way.leftJamb()).isEqualTo(new Point(6, 3.5));
    assertThat(way.rightJamb()).isEqualTo(new Point(6, 4.5));
    assertThat(way.inward().xMetres()).isEqualTo(1);
  }

  @Test
  void anOutlineWrittenClockwiseGivesTheSameWalls() {
    Building building =
        new FloorSketch()
            .room("Shop", 0, 0, 0, 5, 6, 5, 6, 0)
            .room("Workshop", 6, 0, 11, 0, 11, 5, 6, 5)
            .opening("Front", OpeningKind.DOOR, "Shop", OUT, Fact.of(1), 1, 1)
            .floor("G")
            .build();
    FloorGeometry floor = building.floors().getFirst();
    assertThat(floor.walls()).hasSize(7);
    assertThat(floor.findRoom("Shop").orElseThrow().areaSquareMetres()).isEqualTo(30);
    // Now the first wall is the western one; facing it, south is on the left.
    OpeningPlace front = floor.findOpening("Front").orElseThrow();
    assertThat(front.leftJamb()).isEqualTo(new Point(0, 1));
    assertThat(front.inward().xMetres()).isEqualTo(1);
  }

  @Test
  void openingsPastTheEndOrOverEachOtherAreProblems() {
    Building building =
        twoRooms()
            .opening("Long", OpeningKind.WINDOW, "Shop", OUT, Fact.of(1), 5.5, 1)
            .opening("One", OpeningKind.WINDOW, "Shop", OUT, Fact.of(2), 1, 1)
            .opening("Two", OpeningKind.WINDOW, "Shop", OUT, Fact.of(2), 1.5, 1)
            .opening("Beside", OpeningKind.WINDOW, "Shop", OUT, Fact.of(2), 2.5, 1)
            .opening("None", OpeningKind.DOOR, "Shop", OUT, Fact.of(9), 1, 1)
            .opening("Flat", OpeningKind.DOOR, "Shop", OUT, Fact.of(3), 1, 0)
            .floor("G")
            .build();
    assertThat(building.problems())
        .extracting(problem -> problem.path() + ": " + problem.what())
        .containsExactly(
            "floors / G / openings / Long / at: Long ends 6.5 m along a wall of 6 m",
            "floors / G / openings / None / edge: edge 9 between Shop and outside is not there",
            "floors / G / openings / Flat / width: Flat has no width",
            "floors / G / openings / Two / at: Two overlaps One in the same wall");
  }

  @Test
  void anOpeningBetweenRoomsThatShareNoWallSaysHowFarApartTheyAre() {
    Building building =
        new FloorSketch()
            .room("A", 0, 0, 4, 0, 4, 3, 0, 3)
            .room("B", 4.12, 0, 9, 0, 9, 3, 4.12, 3)
            .opening("Door", OpeningKind.DOOR, "A", "B", Fact.missing(), 1, 1)
            .floor("F")
            .build();
    assertThat(building.problems()).hasSize(1);
    assertThat(building.problems().getFirst().what())
        .isEqualTo("A and B share no wall; they are 0.12 m apart");
  }

  @Test
  void messagesSpeakTheUnitOfTheFloor() {
    // 20 ft by 10 ft, the opening ends at 21 ft.
    Building building =
        new FloorSketch()
            .room("A", 0, 0, 6.096, 0, 6.096, 3.048, 0, 3.048)
            .opening("Door", OpeningKind.DOOR, "A", OUT, Fact.of(1), 5.4864, 0.9144)
            .floor("F", DrawingUnit.FEET)
            .build();
    assertThat(building.problems()).hasSize(1);
    assertThat(building.problems().getFirst().what())
        .isEqualTo("Door ends 21 ft along a wall of 20 ft");
    assertThat(building.problems().getFirst().remedy()).contains("from [0, 0] towards [20, 0]");
  }

  @Test
  void anOpeningWithoutAPlaceIsNoFaultButSaysWhichLineToAdd() {
    Building building =
        twoRooms()
            .opening(
                "Front",
                OpeningKind.DOOR,
                "Shop",
                OUT,
                Fact.missing(),
                Fact.missing(),
                Fact.unknown())
            .floor("G")
            .build();
    assertThat(building.problems()).isEmpty();
    assertThat(building.notPlaced()).hasSize(1);
    assertThat(building.notPlaced().getFirst().lineToAdd()).contains("edge:", "at:", "width:");
    assertThat(building.graph().neighbours("Shop")).containsExactly(OUT);
  }

  @Test
  void materialsComeFromTheWallsThatSaySo() {
    FloorGeometry floor =
        twoRooms()
            .wall("Shop", "Workshop", Fact.missing(), Material.GLASS)
            .wall("Shop", OUT, Fact.of(2), Material.WOOD)
            .floor("G")
            .build()
            .floors()
            .getFirst();
    assertThat(floor.wallsBetween("Shop", "Workshop").getFirst().material())
        .isEqualTo(Fact.of(Material.GLASS));
    assertThat(floor.wallsBetween("Shop", OUT))
        .extracting(WallSegment::material)
        .containsExactly(Fact.missing(), Fact.of(Material.WOOD), Fact.missing());
    Building twice =
        twoRooms()
            .wall("Shop", "Workshop", Fact.missing(), Material.GLASS)
            .wall("Workshop", "Shop", Fact.of(1), Material.WOOD)
            .floor("G")
            .build();
    assertThat(twice.problems())
        .extracting(BuildingProblem::what)
        .containsExactly("a wall between Workshop and Shop is described twice");
  }

  @Test
  void unsoundOutlinesAreNamedAndLeftOut() {
    Building building =
        new FloorSketch()
            .room("Bow", 0, 0, 4, 4, 4, 0, 0, 4)
            .room("Line", 10, 0, 12, 0, 14, 0)
            .room("Spike", 20, 0, 24, 0, 24, 4, 30, 4, 24, 4, 20, 4)
            .room("Two", 0, 0, 1, 1)
            .room("Far", 0, 0, 1e12, 0, 1e12, 1)
            .room("Odd", 0, 0, Double.NaN, 0, 1, 1)
            .room("Good", 40, 0, 44, 0, 44, 4, 40, 4)
            .floor("F")
            .build();
    assertThat(building.floors().getFirst().rooms())
        .extracting(RoomGeometry::name)
        .containsExactly("Good");
    assertThat(building.problems())
        .extracting(problem -> problem.path().toString())
        .containsExactly(
            "floors / F / rooms / Bow / outline",
            "floors / F / rooms / Line / outline",
            "floors / F / rooms / Spike / outline",
            "floors / F / rooms / Two / outline",
            "floors / F / rooms / Far / outline / 1",
            "floors / F / rooms / Odd / outline / 1");
    assertThat(building.problems().getFirst().what()).contains("near [2, 2]");
  }

  @Test
  void anOutlineThatCrossesItselfAtACornerIsUnsoundAndOneThatOnlyTouchesItselfIsSound() {
    Building building =
        new FloorSketch()
            // A figure eight through (2, 2), and two squares that touch there.
            .room("Eight", 0, 0, 2, 2, 4, 4, 0, 4, 2, 2, 4, 0)
            .room("Touch", 10, 0, 12, 0, 12, 2, 14, 2, 14, 4, 12, 4, 12, 2, 10, 2)
            .floor("F")
            .build();
    assertThat(building.problems()).hasSize(1);
    assertThat(building.problems().getFirst().what()).startsWith("the outline of Eight");
  }

  @Test
  void overlappingRoomsAreProblemsHoweverTheyOverlap() {
    Building building =
        new FloorSketch()
            .room("Base", 0, 0, 4, 0, 4, 4, 0, 4)
            .room("Across", 3, 3, 6, 3, 6, 6, 3, 6)
            .room("Within", 1, 1, 2, 1, 2, 2, 1, 2)
            .room("Same", 0, 0, 4, 0, 4, 4, 0, 4)
            .room("Half", 0, 0, 4, 0, 0, 4)
            .room("Beside", 4, 0, 8, 0, 8, 3, 4, 3)
            .floor("F")
            .build();
    assertThat(building.problems())
        .extracting(problem -> problem.path().steps().get(3))
        .containsExactly("Across", "Within", "Same", "Same", "Same", "Half", "Half", "Half");
  }

  @Test
  void aRoomInsideAnotherIsAllowedWhenTheOuterOutlineGoesRoundIt() {
    FloorGeometry floor =
        new FloorSketch()
            .room("Ring", 0, 0, 9, 0, 9, 9, 0, 9, 0, 0, 3, 3, 3, 6, 6, 6, 6, 3, 3, 3)
            .room("Island", 3, 3, 6, 3, 6, 6, 3, 6)
            .floor("F")
            .build()
            .floors()
            .getFirst();
    assertThat(floor.findRoom("Ring").orElseThrow().areaSquareMetres()).isEqualTo(72);
    assertThat(floor.wallsBetween("Ring", "Island")).hasSize(4);
    assertThat(floor.wallsBetween("Ring", OUT)).hasSize(4);
    assertThat(floor.findRoomAt(new Point(4, 4)).orElseThrow().name()).isEqualTo("Island");
    assertThat(floor.findRoomAt(new Point(1, 4)).orElseThrow().name()).isEqualTo("Ring");
  }

  @Test
  void cornersCloserThanTheSnapDistanceAreNamed() {
    Building building =
        new FloorSketch().room("A", 0, 0, 4, 0, 4.03, 0, 4, 3, 0, 3, 0, 0).floor("F").build();
    assertThat(building.problems())
        .extracting(BuildingProblem::what)
        .containsExactly(
            "corners 2 and 3 of A are 0.03 m apart", "corners 6 and 1 of A are 0 m apart");
    assertThat(building.floors().getFirst().rooms()).hasSize(1);
  }

  @Test
  void aLabelGoesInsideAConcaveRoom() {
    // A horseshoe, whose centre of area lies in its mouth.
    RoomGeometry room =
        new FloorSketch()
            .room("U", 0, 0, 9, 0, 9, 9, 6, 9, 6, 2, 2, 2, 2, 9, 0, 9)
            .floor("F")
            .build()
            .floors()
            .getFirst()
            .rooms()
            .getFirst();
    assertThat(room.contains(room.centre())).isTrue();
    // The widest circle touches three walls at the right foot of the horseshoe: radius between 1.5
    // and 1.7 m.
    assertThat(room.distanceToWallsMetres(room.centre())).isBetween(1.5, 1.7);
  }

  @Test
  void devicesFindTheirRoom() {
    Building building =
        twoRooms()
            .opening("Front", OpeningKind.DOOR, "Shop", OUT, Fact.of(1), 1, 1)
            .floor("G")
            .room("Flat", 0, 0, 5, 0, 5, 5, 0, 5)
            .floor("First")
            .device("by opening", Fact.missing(), Fact.of("Front"), Fact.missing())
            .device("by place", Fact.missing(), Fact.missing(), Fact.of(new Point(8, 1)))
            .device("either", Fact.missing(), Fact.missing(), Fact.of(new Point(1, 1)))
            .device("by room", Fact.of("Flat"), Fact.missing(), Fact.missing())
            .device("astray", Fact.of("Flat"), Fact.missing(), Fact.of(new Point(8, 1)))
            .device("nowhere", Fact.missing(), Fact.missing(), Fact.missing())
            .build();
    assertThat(building.findDevice("by opening").orElseThrow())
        .satisfies(place -> {
          assertThat(place.room()).contains("Shop");
          assertThat(place.at()).contains(new Point(1.5, 0));
        });
    assertThat(building.findDevice("by place").orElseThrow().room()).contains("Workshop");
    assertThat(building.findDevice("either")).isEmpty();
    assertThat(building.notPlaced())
        .singleElement()
        .satisfies(missing -> assertThat(missing.lineToAdd()).isEqualTo("room: Shop"));
    assertThat(building.findDevice("by room").orElseThrow().floor()).isEqualTo("First");
    assertThat(building.problems())
        .extracting(BuildingProblem::what)
        .containsExactly("astray lies 3 m outside Flat");
    assertThat(building.findDevice("nowhere")).isEmpty();
  }

  @Test
  void routesTakeTheFewestPassagesAndAllUsableOnes() {
    RoomGraph graph =
        new FloorSketch()
            .room("Shop", 0, 0, 6, 0, 6, 5, 0, 5)
            .room("Workshop", 6, 0, 11, 0, 11, 5, 6, 5)
            .opening("Front", OpeningKind.DOOR, "Shop", OUT, Fact.of(1), 1, 1)
            .opening("Way", OpeningKind.DOORWAY, "Shop", "Workshop", Fact.missing(), 4, 1)
            .opening("Pane", OpeningKind.WINDOW, "Workshop", OUT, Fact.of(1), 1, 1)
            .stair("Stair", "Workshop", "Landing")
            .floor("G")
            .room("Landing", 6, 0, 11, 0, 11, 5, 6, 5)
            .floor("First")
            .build()
            .graph();
    Route walk = graph.findRoute(OUT, "Landing", Passage::isForWalking).orElseThrow();
    assertThat(walk.rooms()).containsExactly(OUT, "Shop", "Workshop", "Landing");
    assertThat(walk.passages()).extracting(Passage::name).containsExactly("Front", "Way", "Stair");
    // From (2, 0), the nearer jamb of the door, to (6, 4), the nearer jamb of the doorway.
    assertThat(walk.leastLengthMetres()).isCloseTo(Math.hypot(4, 4), within(1e-12));
    Route burglar = graph.findRoute(OUT, "Landing", passage -> true).orElseThrow();
    assertThat(burglar.hops()).isEqualTo(2);
    assertThat(graph.findRoute("Shop", "Shop", passage -> true).orElseThrow().hops()).isZero();
    assertThat(graph.findRoute("Shop", "Nowhere", passage -> true)).isEmpty();
    assertThat(graph.findRoute("Shop", "Landing", passage -> !passage.isStair())).isEmpty();
  }

  @Test
  void aWayToAnotherFloorBelongsUnderStairs() {
    Building building =
        new FloorSketch()
            .room("Hall", 0, 0, 5, 0, 5, 5, 0, 5)
            .opening("Door", OpeningKind.DOOR, "Hall", "Loft", Fact.missing(), 1, 1)
            .opening("Gap", OpeningKind.DOOR, "Hall", "Attic", Fact.missing(), 1, 1)
            .floor("G")
            .room("Loft", 0, 0, 5, 0, 5, 5, 0, 5)
            .floor("Top")
            .build();
    assertThat(building.problems())
        .extracting(BuildingProblem::what)
        .containsExactly("Loft is on floor Top, not on G", "there is no room Attic");
    assertThat(building.problems().getFirst().remedy()).contains("stairs:");
  }

  @Test
  void tenThousandCornersAreBuiltAndMoreAreRefusedWithTheirPlace() {
    List<Point> circle = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      double angle = 2 * Math.PI * i / 10_000;
      circle.add(new Point(500 * Math.cos(angle), 500 * Math.sin(angle)));
    }
    Building round = new FloorSketch().room("Round", circle).floor("F").build();
    assertThat(round.problems()).isEmpty();
    assertThat(round.findRoom("Round").orElseThrow().areaSquareMetres())
        .isCloseTo(Math.PI * 250_000, within(1.0));
    circle.add(new Point(500, -0.1));
    Building tooMany = new FloorSketch().room("Round", circle).floor("F").build();
    assertThat(tooMany.problems()).hasSize(1);
    assertThat(tooMany.problems().getFirst().path().toString()).isEqualTo("floors / F");
    assertThat(tooMany.isDrawn()).isFalse();
  }
}
