package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.building.Route;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.Person;
import keenward.core.plan.SitePlan;
import keenward.core.plan.TimeOfDay;
import keenward.core.plan.User;
import keenward.core.plan.Weekday;
import keenward.core.quantities.Span;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.SystemModel;

/**
 * The habits of a plan, one after the other, from the first arming of a day to the same hour of the
 * next.
 */
final class UsualDay {

  private static final int MINUTE = 60;
  private static final int DAY = 24 * 3600;
  private static final int USUAL_KEYPAD_SECONDS = 6;

  private final SitePlan plan;
  private final Scene scene;
  private final SystemModel model;
  private final Walk walk;

  UsualDay(SitePlan plan, Scene scene, Walk walk) {
    this.plan = plan;
    this.scene = scene;
    this.model = scene.model();
    this.walk = walk;
  }

  /** A habit, who has it, and the index of the code they use. */
  private record Visit(Habit habit, Person person, int user, int minute) {}

  /** The scenarios of the days that differ; nothing when no habit says when it is. */
  List<StandardScenario> scenarios() {
    List<StandardScenario> scenarios = new ArrayList<>();
    List<List<Visit>> seen = new ArrayList<>();
    for (Weekday day : Weekday.values()) {
      List<Visit> visits = visits(day);
      if (!visits.isEmpty() && !seen.contains(visits)) {
        seen.add(visits);
        scenarios.add(scenario(day, visits));
      }
    }
    return scenarios;
  }

  private List<Visit> visits(Weekday day) {
    List<Visit> visits = new ArrayList<>();
    for (Person person : plan.people()) {
      for (Habit habit : person.habits()) {
        Optional<TimeOfDay> time = habit.time().find();
        boolean today = habit.days().isEmpty() || habit.days().contains(day);
        int user = user(person);
        if (today && time.isPresent() && user != SystemModel.NONE) {
          visits.add(new Visit(habit, person, user, time.get().minuteOfDay()));
        }
      }
    }
    visits.sort(Comparator.comparingInt(Visit::minute));
    return visits;
  }

  private int user(Person person) {
    for (int index = 0; index < plan.users().size(); index++) {
      User user = plan.users().get(index);
      if (user.person().orElse(user.name()).equals(person.name())) {
        return index;
      }
    }
    return SystemModel.NONE;
  }

  private StandardScenario scenario(Weekday day, List<Visit> visits) {
    ScriptText script = scene.script();
    int first = firstArming(visits);
    for (int index = 0; index <= visits.size(); index++) {
      Visit visit = visits.get((first + index) % visits.size());
      int days = (first + index) / visits.size();
      script.at(days * DAY + visit.minute() * MINUTE);
      write(script, visit);
    }
    return new StandardScenario(
        "a usual day, " + day.word(),
        "what people do every day should raise nothing; the walk between door and keypad is taken as "
            + "4 s a room",
        script.toString());
  }

  private static int firstArming(List<Visit> visits) {
    for (int index = 0; index < visits.size(); index++) {
      if (visits.get(index).habit().action() != HabitAction.DISARM) {
        return index;
      }
    }
    return 0;
  }

  private void write(ScriptText script, Visit visit) {
    Habit habit = visit.habit();
    script.comment(visit.person().name() + " " + habit.name());
    Optional<String> door = habit.through().find();
    Optional<String> keypad = habit.keypad().find();
    Optional<Route> route =
        door.isPresent() && keypad.isPresent()
            ? walk.inwards(door.get(), keypad.get())
            : Optional.empty();
    ScriptText.Order order = new ScriptText.Order(visit.user(), keypad(keypad));
    int atKeypad =
        habit
            .keypadTime()
            .find()
            .map(Span::seconds)
            .map(UsualDay::whole)
            .orElse(USUAL_KEYPAD_SECONDS);
    String orders = " by " + script.user(order.user()) + script.at(order);
    if (habit.action() == HabitAction.DISARM) {
      door.ifPresent(name -> walk.comeIn(script, name, route));
      script.later(atKeypad).line("disarm" + orders);
    } else {
      script.line(habit.action().word() + orders);
      door.ifPresent(name -> walk.goOut(script, name, route));
    }
  }

  private static int whole(double seconds) {
    return (int) Math.ceil(seconds);
  }

  private int keypad(Optional<String> name) {
    for (int index = 0; index < model.keypads().size(); index++) {
      KeypadModel each = model.keypads().get(index);
      if (name.isPresent() && each.name().equals(name.get())) {
        return index;
      }
    }
    return SystemModel.NONE;
  }
}
