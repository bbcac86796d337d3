package keenward.core.building.placing;

import static keenward.core.plan.CoveragePattern.CEILING;
import static keenward.core.plan.CoveragePattern.FAN;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.OpeningKind.DOORWAY;
import static keenward.core.plan.OpeningKind.WINDOW;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import keenward.core.building.Building;
import keenward.core.building.placing.Suggestion.RoomResult;
import keenward.core.plan.Coverage;
import keenward.core.plan.CoveragePattern;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.DeviceType;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.progress.Progress;
import keenward.core.progress.WorkStopped;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;
import org.junit.jupiter.api.Test;

class DetectorPlacerTest {

  private static final CoverChooser SEARCH =
      (problem, progress) -> {
        FewestChoice.Found found = FewestChoice.search(problem, 6, Long.MAX_VALUE);
        return new CoverChooser.Choice(found.chosen().orElseThrow(), found.atLeast());
      };

  private static DeviceType type(String name, CoveragePattern pattern, double metres, int degrees) {
    DeviceTraits none = DeviceTraits.none();
    return new DeviceType(
        name,
        new DeviceTraits(
            Fact.of(MOTION),
            none.wiring(),
            none.inputs(),
            none.standbyCurrent(),
            none.alarmCurrent(),
            none.alarmTime(),
            none.minimumVoltage(),
            Fact.of(
                new Coverage(
                    Fact.of(pattern),
                    Fact.of(new Length(metres, metres + " m")),
                    Fact.of(new Angle(degrees, degrees + " deg")),
                    Fact.missing(),
                    Fact.missing())),
            none.cellLife(),
            none.replaceAfter(),
            none.securityGrade(),
            none.sensitivity(),
            none.frequency(),
            none.radioPower(),
            none.checkIn(),
            none.latching(),
            none.sound(),
            none.gaps(),
            none.load()));
  }

  private static Suggestion suggest(PlanBuilder builder, Wish wish) {
    SitePlan plan = builder.build();
    return DetectorPlacer.propose(plan, Building.of(plan), wish, SEARCH, Progress.SILENT);
  }

  private static PlanBuilder stores() {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor -> floor.room("Store", STORE, 0, 0, 6, 4).room("Hall", HALL, 6, 0, 9, 4));
  }

  private static Wish of(double share, String... rooms) {
    return new Wish(share, 1, List.of(rooms), List.of(), false);
  }

  @Test
  void putsOneFanIntoACornerOfARoomThatItSpans() {
    Suggestion suggestion = suggest(stores().type(type("fan", FAN, 12, 90)), of(0.9, "Store"));

    assertThat(suggestion.placements()).hasSize(1);
    assertThat(suggestion.gap()).isZero();
    Candidate place = suggestion.placements().getFirst().candidate();
    assertThat(place.mount()).isEqualTo(Candidate.Mount.CORNER);
    RoomResult room = suggestion.rooms().getFirst();
    assertThat(room.before()).isZero();
    // It hangs 0.106 m off both walls and does not see the two strips beside it.
    assertThat(room.after()).isBetween(0.94, 0.97);
  }

  /** A wall between two rooms asks for one in each; whoever ignores walls needs one. */
  @Test
  void doesNotLookThroughWallsButThroughADoorway() {
    PlanBuilder walled = stores().type(type("fan", FAN, 12, 90));
    assertThat(suggest(walled, of(0.8, "Store", "Hall")).placements()).hasSize(2);

    PlanBuilder open =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Store", STORE, 0, 0, 0.9, 4)
                        .room("Hall", HALL, 0.9, 0, 3.9, 4)
                        .opening("Way", DOORWAY, "Hall", "Store", 1))
            .type(type("fan", FAN, 12, 170));
    assertThat(suggest(open, of(0.2, "Store", "Hall")).placements()).hasSize(1);
  }

  /** Four of 3 m range to see a floor of 6 m x 6 m nearly whole: one in each corner. */
  @Test
  void takesMoreOfAShorterRange() {
    PlanBuilder plan =
        PlanBuilder.site()
            .floor("Ground", floor -> floor.room("Store", STORE, 0, 0, 6, 6))
            .type(type("short", FAN, 4.4, 90));

    Suggestion suggestion = suggest(plan, of(0.9, "Store"));

    assertThat(suggestion.placements()).hasSize(4);
    assertThat(suggestion.atLeast()).isGreaterThanOrEqualTo(3);
  }

  @Test
  void countsWhatThePlanHasUnlessAskedAfresh() {
    PlanBuilder plan =
        stores()
            .type(type("dome", CEILING, 6, 360))
            .device(
                "There",
                MOTION,
                device -> device.room("Store").at(3, 2).covers(CEILING, "6 m", "360 deg"))
            .zone(1, "There", INSTANT, zone -> zone.device("There"));

    Suggestion beside = suggest(plan, of(0.9, "Store"));
    assertThat(beside.placements()).isEmpty();
    assertThat(beside.kept()).isEqualTo(1);
    assertThat(beside.rooms().getFirst().before()).isCloseTo(1, within(1e-9));

    Suggestion afresh = suggest(plan, new Wish(0.9, 1, List.of("Store"), List.of(), true));
    assertThat(afresh.placements()).hasSize(1);
    assertThat(afresh.kept()).isZero();
    assertThat(afresh.plan().findDevice("There")).isEmpty();
  }

  @Test
  void looksAwayFromAWindowWhereItCan() {
    PlanBuilder plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Store", STORE, 0, 0, 2, 2)
                        .opening("Window", WINDOW, "Store", "outside", 1))
            .type(type("fan", FAN, 12, 90));

    Suggestion suggestion = suggest(plan, of(0.8, "Store"));

    assertThat(suggestion.placements().getFirst().candidate().glare()).isEmpty();
    assertThat(suggestion.placements().getFirst().reason()).contains("looks at no window");
  }

  @Test
  void saysWhatIsMissingWithoutATypeThatSaysWhatItSees() {
    Suggestion suggestion = suggest(stores(), of(0.9, "Store"));

    assertThat(suggestion.placements()).isEmpty();
    assertThat(suggestion.notAssessed()).singleElement().asString().contains("no type of motion");
  }

  @Test
  void saysWhichRoomsAreNotDrawnSoundly() {
    PlanBuilder crossed =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor.room(
                        "Hall",
                        HALL,
                        List.of(
                            new Point(0, 0), new Point(4, 4), new Point(4, 0), new Point(0, 4))))
            .type(type("fan", FAN, 12, 90));

    assertThat(suggest(crossed, of(0.9)).notAssessed())
        .singleElement()
        .asString()
        .contains("'Hall', which has no sound outline");
  }

  @Test
  void takesNoTypeThatSeesNothing() {
    Suggestion suggestion =
        suggest(stores().type(type("blind", FAN, 0, 90)).type(type("slit", FAN, 12, 0)), of(0.9));

    assertThat(suggestion.placements()).isEmpty();
    assertThat(suggestion.notAssessed()).hasSize(1);
  }

  @Test
  void stopsWhenItIsNoLongerWanted() {
    SitePlan plan = stores().type(type("fan", FAN, 12, 90)).build();

    assertThatThrownBy(() ->
            DetectorPlacer.propose(
                plan, Building.of(plan), of(0.9), SEARCH, (what, done, total) -> false))
        .isInstanceOf(WorkStopped.class);
  }

  @Test
  void placesStandInTheirRoomAndOutOfFurniture() {
    SitePlan plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor.room(
                        "Store",
                        STORE,
                        List.of(
                            new Point(0, 0),
                            new Point(6, 0),
                            new Point(6, 3),
                            new Point(3, 5),
                            new Point(0, 4))))
            .build();
    Building building = Building.of(plan);

    List<Candidate> candidates =
        Candidates.in(
            building.floors().getFirst(),
            building.floors().getFirst().rooms(),
            List.of(type("fan", FAN, 12, 90), type("dome", CEILING, 5, 360)));

    assertThat(candidates).hasSizeGreaterThan(40);
    assertThat(candidates)
        .allMatch(
            candidate -> building.floors().getFirst().rooms().getFirst().contains(candidate.at()));
  }
}
