package keenward.core.rules.arming;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.Partition;
import keenward.core.plan.Person;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** Somebody arms stay or night where no zone is live in that mode. */
public final class NothingLiveAtHome implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ARMING, 2, "nothing-live-at-home", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for a habit of arming stay or night by which a partition is armed where no burglary zone is"
                  + " live in that mode.")
          .consequence("The keypad says armed, and nothing is watched while people sleep.")
          .limits(
              "Goes by the habits of people, the partitions of the keypad they use and those their user may arm."
                  + " A common area follows its partitions and is not looked at.")
          .remedy("Let the contacts of doors and windows be live in that mode.")
          .broken(
              """
              keenward: 1
              site: Example
              people:
                Ines:
                  habits:
                    goes to bed: { does: arm night, at: "22:30", keypad: Hall keypad }
              devices:
                Hall keypad: { kind: keypad, wiring: bus }
              zones:
                1: { name: Hall, response: instant, device: motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              people:
                Ines:
                  habits:
                    goes to bed: { does: arm night, at: "22:30", keypad: Hall keypad }
              devices:
                Hall keypad: { kind: keypad, wiring: bus }
              zones:
                1: { name: Hall, response: instant, device: motion }
                2: { name: Windows, response: perimeter, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              people:
                Ines:
                  habits:
                    goes to bed: { does: arm night, at: "22:30", keypad: Hall keypad }
              devices:
                Hall keypad: { kind: keypad, wiring: bus }
              zones:
                1: { name: Hall, response: instant, device: motion, live in: [away, night] }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    record Armed(Partition partition, ArmingMode mode) {}
    Set<Armed> judged = new LinkedHashSet<>();
    for (Person person : plan.people()) {
      for (Habit habit : person.habits()) {
        Optional<ArmingMode> mode = mode(habit.action());
        if (mode.isEmpty()) {
          continue;
        }
        for (Partition partition : armedBy(plan, person, habit)) {
          if (judged.add(new Armed(partition, mode.get()))) {
            judge(plan, person, habit, partition, mode.get(), report);
          }
        }
      }
    }
  }

  private static void judge(
      SitePlan plan,
      Person person,
      Habit habit,
      Partition partition,
      ArmingMode mode,
      Report report) {
    report.judged();
    boolean anyLive =
        plan.zonesOf(partition)
            .anyMatch(
                zone -> Kinds.isArmedBurglary(zone.response()) && zone.liveModes().contains(mode));
    if (!anyLive) {
      report.found(
          PlanPath.of("people", person.name(), "habits", habit.name()),
          person.name()
              + " arms "
              + mode.word()
              + " ('"
              + habit.name()
              + "'), and none of the burglary zones of partition '"
              + partition.name()
              + "' is live in "
              + mode.word()
              + ".",
          "Give the contacts of its doors and windows the response perimeter, or `live in: [away, "
              + mode.word()
              + "]`.",
          Involved.zones(plan.zonesOf(partition).map(zone -> zone.number()).toList()));
    }
  }

  private static Optional<ArmingMode> mode(HabitAction action) {
    return switch (action) {
      case ARM_STAY -> Optional.of(ArmingMode.STAY);
      case ARM_NIGHT -> Optional.of(ArmingMode.NIGHT);
      case ARM_AWAY, DISARM -> Optional.empty();
    };
  }

  private static List<Partition> armedBy(SitePlan plan, Person person, Habit habit) {
    Optional<String> keypad = habit.keypad().find();
    Optional<User> user =
        plan.users().stream()
            .filter(each -> each.person().find().filter(person.name()::equals).isPresent())
            .findFirst();
    List<Partition> armed = new ArrayList<>();
    for (Partition partition : plan.partitions()) {
      boolean served =
          keypad.isEmpty()
              || partition.keypads().isEmpty()
              || partition.keypads().contains(keypad.get());
      boolean allowed = user.isEmpty() || user.get().partitions().contains(partition.name());
      if (served && allowed && partition.commonTo().isEmpty()) {
        armed.add(partition);
      }
    }
    return armed;
  }
}
