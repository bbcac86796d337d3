package keenward.core.dialogue.search;

import java.util.List;
import java.util.Set;
import keenward.core.dialogue.machine.State;

/**
 * A lower bound on the acts of any order that finishes each group before it begins the next: the
 * cheapest tour of each group's fields, entered from wherever another group may end or, for one of
 * them, from rest, and the cheapest way out.
 */
final class Bound {
  private final Task task;
  private final Estimate estimate;

  Bound(Task task, Estimate estimate) {
    this.task = task;
    this.estimate = estimate;
  }

  /** No such order for these units can do with fewer acts. */
  int atLeast(List<Scope.Unit> units) {
    State start = task.interpreter.start(task.found);
    Tour all = new Tour(estimate, new Scope(task, units, Set.of()), start, true);
    long sum = 0;
    long fromRest = Cost.NEVER;
    for (Scope.Unit unit : units) {
      Tour own = new Tour(estimate, new Scope(task, List.of(unit), Set.of()), start, false);
      long later = own.enteredFrom(all);
      sum += later;
      fromRest = Math.min(fromRest, own.remaining(start) - later);
    }
    return Math.max(0, Cost.acts(Math.max(0, sum + fromRest + all.cheapestExit())));
  }
}
