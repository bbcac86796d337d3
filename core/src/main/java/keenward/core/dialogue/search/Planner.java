package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.progress.Progress;

/**
 * Finds the way from rest through all groups and back to rest. Few wrong fields are searched as a
 * whole, which gives a shortest order; many are done group by group, each by a shortest way from
 * where the one before ended.
 */
final class Planner {
  private static final int FEW_FIELDS = 10;
  private static final int WHOLE_STATES = 20_000;
  private static final int GROUP_STATES = 8_000;

  /** More wrong fields than this are not searched in one piece. */
  private static final int MANY_FIELDS = 13;

  private static final int AT_ONCE = 10;

  private final Task task;
  private final Estimate estimate;
  private final Ways ways;
  private final Progress progress;

  Planner(Task task, Estimate estimate, Ways ways, Progress progress) {
    this.task = task;
    this.estimate = estimate;
    this.ways = ways;
    this.progress = progress;
  }

  /** The units in which something is wrong, in the description's order. */
  List<Scope.Unit> units() {
    List<Scope.Unit> units = new ArrayList<>();
    add(units, new Scope.Unit("", 0, slots("", 0)));
    for (RecordKind kind : task.description.records()) {
      for (int number = kind.first(); number <= kind.last(); number++) {
        add(units, new Scope.Unit(kind.name(), number, slots(kind.name(), number)));
      }
    }
    return units;
  }

  private void add(List<Scope.Unit> units, Scope.Unit unit) {
    for (Slot slot : unit.slots()) {
      if (!task.right(task.found, slot)) {
        units.add(unit);
        return;
      }
    }
  }

  private List<Slot> slots(String record, int number) {
    List<Slot> slots = new ArrayList<>();
    for (Slot slot : task.layout.slots()) {
      if (slot.field().record().equals(record) && slot.record() == number) {
        slots.add(slot);
      }
    }
    return slots;
  }

  Plan plan(List<Scope.Unit> units) {
    State start = task.interpreter.start(task.found);
    int wrong = 0;
    for (Scope.Unit unit : units) {
      for (Slot slot : unit.slots()) {
        wrong += task.right(task.found, slot) ? 0 : 1;
      }
    }
    if ((units.size() == 1 || wrong <= FEW_FIELDS) && allKnown(units)) {
      Search whole = search(start, new Scope(task, units, Set.of()), true, WHOLE_STATES);
      Optional<Path> path = whole.from(start);
      if (path.isPresent()) {
        return new Plan.Found(path.get(), true);
      }
    }
    return oneByOne(start, units);
  }

  private boolean allKnown(List<Scope.Unit> units) {
    for (Scope.Unit unit : units) {
      for (Slot slot : unit.slots()) {
        if (!task.found.get(slot).known()) {
          return false;
        }
      }
    }
    return true;
  }

  private Search search(State start, Scope scope, boolean leaving, int most) {
    Tour tour = new Tour(estimate, scope, start, leaving);
    return new Search(
        task,
        scope,
        tour::remaining,
        leaving
            ? state -> scope.complete(state.working()) && Left.safely(task, state)
            : leavable(scope),
        most,
        progress);
  }

  private Predicate<State> leavable(Scope scope) {
    return state -> scope.complete(state.working()) && ways.out(state).isPresent();
  }

  /** Group by group, those that cannot be done yet once more at the end. */
  private Plan oneByOne(State start, List<Scope.Unit> units) {
    List<Edge> edges = new ArrayList<>();
    State state = start;
    long cost = 0;
    boolean gaveUp = false;
    List<Scope.Unit> left = new ArrayList<>(units);
    int done = 0;
    while (!left.isEmpty()) {
      List<Scope.Unit> postponed = new ArrayList<>();
      for (Scope.Unit unit : left) {
        progress.check("finding the keys for " + title(unit), done, units.size());
        Attempt attempt = attempt(state, List.of(unit), done == units.size() - 1);
        gaveUp |= attempt.gaveUp();
        if (attempt.path().isEmpty()) {
          postponed.add(unit);
          continue;
        }
        done++;
        edges.addAll(attempt.path().get().edges());
        state = attempt.path().get().end();
        cost += attempt.path().get().cost();
      }
      if (postponed.size() == left.size()) {
        Attempt together =
            left.size() > 1 ? attempt(state, left, true) : new Attempt(Optional.empty(), false);
        if (together.path().isEmpty()) {
          return new Plan.Failed(left, gaveUp || together.gaveUp());
        }
        edges.addAll(together.path().get().edges());
        state = together.path().get().end();
        cost += together.path().get().cost();
        postponed.clear();
      }
      left = postponed;
    }
    return finished(start, edges, state, cost);
  }

  private Plan finished(State start, List<Edge> edges, State state, long cost) {
    if (Left.safely(task, state)) {
      return new Plan.Found(new Path(start, edges, state, cost), false);
    }
    Optional<Path> out = ways.out(state);
    if (out.isEmpty()) {
      return new Plan.Failed(List.of(), false);
    }
    List<Edge> all = new ArrayList<>(edges);
    all.addAll(out.get().edges());
    return new Plan.Found(new Path(start, all, out.get().end(), cost + out.get().cost()), false);
  }

  private static String title(Scope.Unit unit) {
    return unit.record().isEmpty() ? "the settings" : unit.record() + " " + unit.number();
  }

  private record Attempt(Optional<Path> path, boolean gaveUp) {}

  /** One group, or several together; fields outside the plan are given up only if need be. */
  private Attempt attempt(State state, List<Scope.Unit> units, boolean last) {
    Scope scope = new Scope(task, units, Set.of());
    if (scope.wrong(state.working()).size() > MANY_FIELDS) {
      return bitByBit(state, scope);
    }
    Search strict = search(state, scope, last, GROUP_STATES).mixing();
    Optional<Path> path = strict.from(state);
    if (path.isPresent()) {
      return new Attempt(path, false);
    }
    if (strict.gaveUp()) {
      return hopeless(units) ? new Attempt(Optional.empty(), true) : bitByBit(state, scope);
    }
    Set<Integer> outside = new HashSet<>();
    for (Scope.Unit unit : units) {
      for (Slot slot : unit.slots()) {
        if (!task.planned(slot) && !task.facts.given(slot.field()).isEmpty()) {
          // Nothing but a side effect may change it for good.
          outside.add(slot.index());
        }
      }
    }
    if (outside.isEmpty()) {
      return new Attempt(Optional.empty(), false);
    }
    Search lenient = search(state, new Scope(task, units, outside), last, GROUP_STATES).mixing();
    return new Attempt(lenient.from(state), lenient.gaveUp());
  }

  /** Whether it is clear by now why something cannot be done. */
  private boolean hopeless(List<Scope.Unit> units) {
    for (Scope.Unit unit : units) {
      for (Slot slot : unit.slots()) {
        if (!task.noticed(slot).isEmpty()) {
          return true;
        }
      }
    }
    return false;
  }

  /** The nearest few fields first, then the next: longer than need be, but soon found. */
  private Attempt bitByBit(State start, Scope scope) {
    List<Edge> edges = new ArrayList<>();
    State state = start;
    long cost = 0;
    boolean gaveUp = false;
    int atOnce = AT_ONCE;
    while (!scope.complete(state.working())) {
      List<Slot> wrong = scope.wrong(state.working());
      List<Slot> near = new Tour(estimate, scope, state, false).nearestFirst(state);
      List<Slot> next = new ArrayList<>(near.subList(0, Math.min(atOnce, near.size())));
      if (next.isEmpty()) {
        next.addAll(wrong);
      }
      Scope few = scope.requiring(next);
      Search search = search(state, few, false, GROUP_STATES).mixing();
      Optional<Path> path = search.from(state);
      gaveUp |= search.gaveUp();
      if (path.isEmpty() || scope.wrong(path.get().end().working()).size() >= wrong.size()) {
        if (atOnce == 1) {
          return new Attempt(Optional.empty(), gaveUp);
        }
        atOnce = 1;
        continue;
      }
      edges.addAll(path.get().edges());
      cost += path.get().cost();
      state = path.get().end();
    }
    return new Attempt(Optional.of(new Path(start, edges, state, cost)), gaveUp);
  }
}
