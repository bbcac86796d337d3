package keenward.core.rules.users;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.Partition;
import keenward.core.plan.Person;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.plan.UserRole;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Somebody can arm an area, and cannot disarm it. */
public final class ArmsButCannotDisarm implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.USERS, 1, "arms-but-cannot-disarm", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for users who may only arm, and for habits of disarming that the person's user or keypad does"
                  + " not allow.")
          .consequence(
              "Somebody who comes back for a forgotten bag starts an alarm that they cannot stop; somebody who opens"
                  + " up stands at a keypad that refuses them.")
          .limits(
              "A user who may only arm is a warning, since others may open up for them; an error when they have a"
                  + " habit of disarming, or nobody else can disarm a partition of theirs.")
          .remedy(
              "Give them the role user for their own partitions, or a keypad that serves these.")
          .broken(
              """
              keenward: 1
              site: Example
              people:
                Odile:
                  habits:
                    opens up: { does: disarm, at: "07:30", keypad: Hall keypad }
              devices:
                Hall keypad: { kind: keypad, wiring: bus }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              users:
                1: { name: Bram, role: master }
                2: { name: Odile, role: arm-only, person: Odile }
                3: { name: Technician, role: technician }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              people:
                Odile:
                  habits:
                    opens up: { does: disarm, at: "07:30", keypad: Hall keypad }
              devices:
                Hall keypad: { kind: keypad, wiring: bus }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              users:
                1: { name: Bram, role: master }
                2: { name: Odile, role: user, person: Odile }
                3: { name: Technician, role: technician }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              people:
                Odile:
                  habits:
                    opens up: { does: disarm, at: "07:30", keypad: Hall keypad }
              devices:
                Hall keypad: { kind: keypad, wiring: bus }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              users:
                1: { name: Bram, role: master }
                2: { name: Odile, role: master, person: Odile }
                3: { name: Technician, role: technician }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    if (plan.users().isEmpty()) {
      report.notAssessed(
          PlanPath.of("users"),
          "who may disarm what they arm, since the plan names no users",
          "users: { 1: { name: ..., role: master } }");
      return;
    }
    for (User user : plan.users()) {
      report.judged();
      if (user.role() == UserRole.ARM_ONLY) {
        judgeRole(plan, user, report);
      }
    }
    for (Person person : plan.people()) {
      for (Habit habit : person.habits()) {
        if (habit.action() == HabitAction.DISARM) {
          judgeHabit(plan, person, habit, report);
        }
      }
    }
  }

  private static void judgeRole(SitePlan plan, User user, Report report) {
    Optional<Habit> disarms =
        user.person()
            .find()
            .flatMap(name -> findPerson(plan, name))
            .flatMap(person ->
                person.habits().stream()
                    .filter(habit -> habit.action() == HabitAction.DISARM)
                    .findFirst());
    List<String> stuck =
        user.partitions().stream()
            .filter(partition -> plan.users().stream().noneMatch(each -> disarms(each, partition)))
            .toList();
    String because =
        disarms
            .map(habit -> ", and has the habit '" + habit.name() + "' of disarming")
            .orElse(stuck.isEmpty() ? "" : ", and nobody else can disarm " + Words.names(stuck));
    report.found(
        because.isEmpty() ? Severity.WARNING : Severity.ERROR,
        PlanPath.of("users", user.number(), "role"),
        "User "
            + user.number()
            + " '"
            + user.name()
            + "' can arm "
            + Words.names(user.partitions())
            + " and cannot disarm"
            + because
            + ".",
        "Give user "
            + user.number()
            + " the role user, or make sure that somebody else always opens up.",
        Involved.NOTHING);
  }

  private static void judgeHabit(SitePlan plan, Person person, Habit habit, Report report) {
    PlanPath place = PlanPath.of("people", person.name(), "habits", habit.name());
    Optional<User> user =
        plan.users().stream()
            .filter(each -> each.person().find().filter(person.name()::equals).isPresent())
            .findFirst();
    if (user.isEmpty()) {
      report.notAssessed(
          place,
          "whether " + person.name() + " may disarm, since no user of the plan is " + person.name(),
          "person: " + person.name());
      return;
    }
    Optional<String> keypad = habit.keypad().find();
    if (keypad.isEmpty() || user.get().role() == UserRole.ARM_ONLY) {
      return;
    }
    report.judged();
    List<String> served =
        plan.partitions().stream()
            .filter(each -> each.keypads().isEmpty() || each.keypads().contains(keypad.get()))
            .map(Partition::name)
            .toList();
    if (user.get().partitions().stream().noneMatch(served::contains)) {
      report.found(
          place.then("keypad"),
          person.name()
              + " disarms at '"
              + keypad.get()
              + "', which serves "
              + Words.names(served)
              + ", and user "
              + user.get().number()
              + " '"
              + user.get().name()
              + "' may use "
              + Words.names(user.get().partitions())
              + " only.",
          "Let '" + keypad.get() + "' serve a partition of theirs, or give them that partition.",
          Involved.devices(List.of(keypad.get())));
    }
  }

  private static boolean disarms(User user, String partition) {
    return (user.role() == UserRole.MASTER || user.role() == UserRole.USER)
        && user.partitions().contains(partition);
  }

  private static Optional<Person> findPerson(SitePlan plan, String name) {
    return plan.people().stream().filter(person -> person.name().equals(name)).findFirst();
  }
}
