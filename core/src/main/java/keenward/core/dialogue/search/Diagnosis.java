package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Reason;
import keenward.core.progress.Progress;

/** Finds out why there is no order. */
final class Diagnosis {
  private static final int MOST_STATES = 5000;

  private final Task task;
  private final Estimate estimate;
  private final Ways ways;
  private final Progress progress;

  Diagnosis(Task task, Estimate estimate, Ways ways, Progress progress) {
    this.task = task;
    this.estimate = estimate;
    this.ways = ways;
    this.progress = progress;
  }

  List<Reason> of(Plan.Failed failed) {
    State start = task.interpreter.start(task.found);
    Optional<Path> in =
        new Search(
                task,
                Scope.nothing(task),
                state -> 0,
                task.interpreter::programmingOpen,
                MOST_STATES,
                progress)
            .from(start);
    if (in.isEmpty()) {
      return List.of(noWayIn());
    }
    if (ways.out(in.get().end()).isEmpty()) {
      return List.of(noWayOut());
    }
    List<Reason> reasons = new ArrayList<>();
    for (Scope.Unit unit : failed.units()) {
      reasons.addAll(of(unit, start));
    }
    if (reasons.isEmpty()) {
      reasons.add(together(failed));
    }
    return reasons;
  }

  private List<Reason> of(Scope.Unit unit, State start) {
    List<Reason> reasons = new ArrayList<>();
    for (Slot slot : unit.slots()) {
      reasons.addAll(task.noticed(slot));
    }
    if (!reasons.isEmpty()) {
      // Fields that cannot be reached may just lie behind these.
      return reasons;
    }
    Scope scope = new Scope(task, List.of(unit), Set.of());
    for (Slot slot : scope.wrong(task.found)) {
      reasons.addAll(of(slot, scope.requiring(List.of(slot)), start));
    }
    return reasons;
  }

  private List<Reason> of(Slot slot, Scope scope, State start) {
    Search search =
        new Search(
            task,
            scope,
            new Tour(estimate, scope, start, false)::remaining,
            state -> scope.complete(state.working()) && ways.out(state).isPresent(),
            MOST_STATES,
            progress);
    if (search.from(start).isPresent()) {
      return List.of();
    }
    return List.of(search.gaveUp() ? Reasons.tooLarge(slot) : Reasons.noWay(task, slot));
  }

  private Reason noWayIn() {
    return new Reason(
        Reason.Kind.NO_WAY_IN,
        Optional.empty(),
        "Programming cannot be opened at keypad \"" + task.keypad.name() + "\".",
        "Use another keypad, or say in the found file what code is set.");
  }

  private static Reason noWayOut() {
    return new Reason(
        Reason.Kind.NO_SAFE_WAY_OUT,
        Optional.empty(),
        "Programming cannot be left safely at this keypad.",
        "Use another keypad, or add the documented way of leaving to the description.");
  }

  private static Reason together(Plan.Failed failed) {
    List<String> names = new ArrayList<>();
    for (Scope.Unit unit : failed.units()) {
      names.add(unit.record().isEmpty() ? "settings" : unit.record() + " " + unit.number());
    }
    return new Reason(
        failed.gaveUp() ? Reason.Kind.TOO_LARGE : Reason.Kind.NO_WAY,
        Optional.empty(),
        "Each field can be set, but no keys were found that set all of these: "
            + String.join(", ", names)
            + ".",
        "Make an order for part of the plan first, and another from what the panel holds then.");
  }
}
