package keenward.core.rules.users;

import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.HabitAction.DISARM;
import static keenward.core.plan.UserRole.ARM_ONLY;
import static keenward.core.plan.UserRole.MASTER;
import static keenward.core.plan.UserRole.USER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class ArmsButCannotDisarmTest {

  private final ArmsButCannotDisarm rule = new ArmsButCannotDisarm();

  private static PlanBuilder club() {
    return PlanBuilder.site()
        .partition("Boats", 1, List.of("Boat keypad"))
        .partition("Club", 2, List.of("Lobby keypad"))
        .device("Boat keypad", KEYPAD)
        .device("Lobby keypad", KEYPAD);
  }

  @Test
  void warnsOfAnArmOnlyUserForWhomOthersOpen() {
    PlanBuilder plan =
        club()
            .user(1, "Bram", MASTER, List.of("Boats", "Club"))
            .user(3, "Juniors", ARM_ONLY, List.of("Boats"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at users / 3 / role: User 3 'Juniors' can arm 'Boats' and cannot disarm.");
  }

  @Test
  void findsAnArmOnlyUserWhoUsuallyOpens() {
    PlanBuilder plan =
        club()
            .person("Odile", PlanBuilder.habit("opens", DISARM, "Gate", "Boat keypad"))
            .user(1, "Bram", MASTER, List.of("Boats", "Club"))
            .user(3, "Odile", ARM_ONLY, List.of("Boats"), Fact.of("Odile"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at users / 3 / role: User 3 'Odile' can arm 'Boats' and cannot disarm, and has the"
                + " habit 'opens' of disarming.");
  }

  @Test
  void findsAPartitionThatNobodyCanDisarm() {
    PlanBuilder plan =
        club()
            .user(1, "Bram", MASTER, List.of("Club"))
            .user(3, "Juniors", ARM_ONLY, List.of("Boats", "Club"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at users / 3 / role: User 3 'Juniors' can arm 'Boats' and 'Club' and cannot disarm,"
                + " and nobody else can disarm 'Boats'.");
  }

  @Test
  void findsAKeypadThatDoesNotServeThem() {
    PlanBuilder plan =
        club()
            .person("Odile", PlanBuilder.habit("opens", DISARM, "Gate", "Lobby keypad"))
            .user(2, "Odile", USER, List.of("Boats"), Fact.of("Odile"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at people / Odile / habits / opens / keypad: Odile disarms at 'Lobby keypad', which"
                + " serves 'Club', and user 2 'Odile' may use 'Boats' only.");
  }

  @Test
  void passesUsersWhoDisarmTheirOwn() {
    PlanBuilder plan =
        club()
            .person("Odile", PlanBuilder.habit("opens", DISARM, "Gate", "Boat keypad"))
            .user(2, "Odile", USER, List.of("Boats"), Fact.of("Odile"));

    assertThat(findings(rule, plan)).isEmpty();
  }

  @Test
  void doesNotAssessWithoutUsersOrWithoutTheUserOfAPerson() {
    assertThat(notAssessed(rule, club())).hasSize(1);
    PlanBuilder plan =
        club()
            .person("Odile", PlanBuilder.habit("opens", DISARM, "Gate", "Boat keypad"))
            .user(1, "Bram", MASTER);
    assertThat(notAssessed(rule, plan))
        .containsExactly(
            "people / Odile / habits / opens: whether Odile may disarm, since no user of the plan is"
                + " Odile; add: person: Odile");
  }
}
