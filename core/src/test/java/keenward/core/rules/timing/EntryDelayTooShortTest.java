package keenward.core.rules.timing;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.RoomUse.OFFICE;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.Pace;
import keenward.core.plan.PlanBuilder;
import keenward.core.quantities.Span;
import org.junit.jupiter.api.Test;

class EntryDelayTooShortTest {

  private final EntryDelayTooShort rule = new EntryDelayTooShort();

  private static Habit comesHome(Fact<Span> atKeypad) {
    return new Habit(
        "comes home",
        HabitAction.DISARM,
        List.of(),
        Fact.missing(),
        Fact.of("Front door"),
        Fact.of("Keypad"),
        atKeypad);
  }

  /**
   * A corridor of 20 m, the door in its south wall from x 0.5 m to 1.4 m, an office at its far end
   * on the right; the office door in the wall x = 2 m, from y 18.5 m to 19.4 m; keypad at (5, 19).
   */
  private static PlanBuilder corridor(Pace pace, Fact<Span> atKeypad, String delay) {
    return PlanBuilder.site()
        .person("Nan", pace, comesHome(atKeypad))
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Corridor", HALL, 0, 0, 2, 20)
                    .room("Office", OFFICE, 2, 18, 6, 20)
                    .opening("Front door", DOOR, "Corridor", "outside", 1)
                    .opening("Office door", DOOR, "Corridor", "Office"))
        .device("Front contact", CONTACT, device -> device.on("Front door"))
        .device("Keypad", KEYPAD, device -> device.room("Office").at(5, 19))
        .panel(panel -> panel.entryDelay(1, delay))
        .zone(1, "Front door", ENTRY_EXIT, zone -> zone.device("Front contact"));
  }

  /**
   * From the middle of the door (0.95, 0), 0.25 m round the jamb (2, 18.5), to (5, 19): tangents of
   * sqrt(1.05^2 + 18.5^2 - 0.25^2) = 18.53 m and sqrt(3^2 + 0.5^2 - 0.25^2) = 3.03 m, and an arc of
   * about 0.3 m, 21.9 m. The 5th percentile of slow walkers is 0.70 m/s: 31.3 s + 5 s + 15 s = 51.3
   * s.
   */
  @Test
  void findsADelayThatASlowWalkerCannotMeet() {
    assertThat(findings(rule, corridor(Pace.SLOW, Fact.of(Span.ofSeconds(15)), "45 s")))
        .containsExactly(
            "warning at people / Nan / habits / comes home: Nan walks 21.9 m from 'Front door' to 'Keypad'."
                + " With the door and 15 s at the keypad, 95 of 100 people of slow pace need up to 52 s,"
                + " and entry delay 1 is 45 s.");
  }

  @Test
  void passesALongerDelayAndABriskerWalker() {
    assertThat(findings(rule, corridor(Pace.SLOW, Fact.of(Span.ofSeconds(15)), "52 s"))).isEmpty();
    assertThat(findings(rule, corridor(Pace.BRISK, Fact.of(Span.ofSeconds(15)), "45 s"))).isEmpty();
    assertThat(run(rule, corridor(Pace.SLOW, Fact.of(Span.ofSeconds(15)), "52 s")).judgedCount())
        .isEqualTo(1);
  }

  /** M 1.35 s + H 0.4 s + 5 K of 1.2 s = 7.75 s: 31.3 s + 5 s + 7.75 s = 44.1 s. */
  @Test
  void takesTheKeystrokeLevelModelWithoutATimeAtTheKeypad() {
    assertThat(findings(rule, corridor(Pace.SLOW, Fact.missing(), "45 s"))).isEmpty();
    assertThat(findings(rule, corridor(Pace.SLOW, Fact.missing(), "44 s"))).hasSize(1);
  }

  @Test
  void doesNotAssessAKeypadWithoutAPlace() {
    PlanBuilder plan =
        corridor(Pace.SLOW, Fact.missing(), "45 s")
            .device("Keypad", KEYPAD, device -> device.room("Office"));
    assertThat(notAssessed(rule, plan))
        .containsExactly(
            "devices / Keypad: whether entry delay 1 is long enough for Nan: walks to 'Keypad', which has"
                + " no place in the drawing; add: at: [1.9, 2]");
  }
}
