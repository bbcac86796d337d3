package keenward.core.building.walking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import keenward.core.building.Passage;
import keenward.core.building.walking.WalkingRoute.Leg;
import keenward.core.plan.Pace;
import keenward.core.plan.Point;
import org.junit.jupiter.api.Test;

/** Against entries and exits worked out by hand from the published figures. */
class WalkTimeTest {

  private static final Place PLACE =
      new Place("Place", "Ground", Optional.empty(), new Point(0, 0), Place.Kind.ROOM);

  private static WalkingRoute route(double metres, double stairMetres) {
    Leg level = new Leg.Level("Ground", List.of(new Point(0, 0), new Point(metres, 0)));
    Leg flight =
        new Leg.Flight(
            new Passage("Stair", "Hall", "Landing", Optional.empty(), Optional.empty()),
            stairMetres);
    return new WalkingRoute(
        PLACE,
        PLACE,
        stairMetres > 0 ? List.of(level, flight) : List.of(level),
        List.of(),
        List.of("Hall"));
  }

  /** 8 m at 1.15 m/s, door 3 s, M + H, 5 keys of 0.5 s: 14.2 s. */
  @Test
  void timesAUsualEntry() {
    WalkTime time =
        new WalkTime(
            route(8, 0),
            Pace.USUAL,
            Handling.doorSeconds(Pace.USUAL),
            Handling.keypadSeconds(Pace.USUAL, 5),
            false);
    assertThat(time.seconds(Gait.Share.MOST)).isCloseTo(14.2, within(0.05));
  }

  /** 8 m at 0.92 m/s, door 3 s, M + H, 5 keys of 1.2 s: 19.4 s. */
  @Test
  void timesASlowEntryWithAnEasyDoor() {
    WalkTime time =
        new WalkTime(route(8, 0), Pace.SLOW, 3, Handling.keypadSeconds(Pace.SLOW, 5), false);
    assertThat(time.seconds(Gait.Share.MOST)).isCloseTo(19.4, within(0.05));
  }

  /** 20 m at 0.92 m/s, door 5 s, M + H, 7 keys of 1.2 s: 36.9 s. */
  @Test
  void timesALongSlowEntry() {
    WalkTime time =
        new WalkTime(
            route(20, 0),
            Pace.SLOW,
            Handling.doorSeconds(Pace.SLOW),
            Handling.keypadSeconds(Pace.SLOW, 7),
            false);
    assertThat(time.seconds(Gait.Share.MOST)).isCloseTo(36.9, within(0.05));
  }

  /** 15 m at 0.92 m/s, 12 m of stairs at 0.4 m/s, door 5 s: 51.3 s. */
  @Test
  void timesAnExitOverStairs() {
    WalkTime time = WalkTime.out(route(15, 12), Optional.empty());
    assertThat(time.seconds(Gait.Share.MOST)).isCloseTo(51.3, within(0.05));
  }

  /** 1.295 - (1.295 - 0.92) 1.6449 / 1.0364 = 0.700 m/s. */
  @Test
  void nearlyAllAreSlowerThanTheStudysFifteenthPercentile() {
    assertThat(Gait.of(Pace.SLOW, Gait.Share.NEARLY_ALL).levelMetresPerSecond())
        .isCloseTo(0.700, within(0.0005));
  }

  @Test
  void walksPartOfTheWay() {
    Gait gait = new Gait(1, 0.5);
    assertThat(route(10, 4).seconds(gait, 3)).isEqualTo(3);
    assertThat(route(10, 4).seconds(gait, 12)).isEqualTo(14);
    assertThat(route(10, 4).back().seconds(gait, 12)).isEqualTo(16);
  }
}
