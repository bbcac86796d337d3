package keenward.core.dialogue.search;

import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.machine.State;
import keenward.core.progress.Progress;

/** Ways that store nothing: out of programming, and back to a place in it. */
final class Ways {
  private static final int MOST_STATES = 4000;

  private final Task task;
  private final ScreenGraph graph;
  private final Progress progress;

  Ways(Task task, ScreenGraph graph, Progress progress) {
    this.task = task;
    this.graph = graph;
    this.progress = progress;
  }

  /** The shortest safe way out that keeps everything entered so far, if there is one. */
  Optional<Path> out(State state) {
    return new Search(
            task,
            Scope.nothing(task),
            rest -> Left.safely(task, rest) ? 0 : graph.leaving(graph.index(rest.screen())),
            rest -> Left.safely(task, rest) && rest.working().equals(state.working()),
            MOST_STATES,
            progress)
        .from(state);
  }

  /**
   * The shortest way from a state to the same screen, location and memory as in another, and the
   * same records as far as they matter there.
   */
  Optional<Path> back(State from, State to) {
    int target = graph.index(to.screen());
    return new Search(
            task,
            Scope.place(task, recordsOf(to), to.location()),
            state -> graph.distance(graph.index(state.screen()), target),
            state -> alike(state, to),
            MOST_STATES,
            progress)
        .from(from);
  }

  /**
   * The shortest way to a state that shows the same on the same screen, whatever the record and the
   * location.
   */
  Optional<Path> backToLook(State from, State to) {
    int target = graph.index(to.screen());
    List<String> lines = task.interpreter.display(to, task.keypad.name()).lines();
    return new Search(
            task,
            Scope.place(task, recordsOf(to), to.location()),
            state -> graph.distance(graph.index(state.screen()), target),
            state ->
                state.screen().equals(to.screen())
                    && state.working().equals(to.working())
                    && task.interpreter.display(state, task.keypad.name()).lines().equals(lines),
            MOST_STATES,
            progress)
        .from(from);
  }

  private boolean alike(State state, State to) {
    return state.alikeBesidesMemory(to, task.liveRecords(to.screen()))
        && state.working().equals(to.working());
  }

  /** Lets the search go to the records that are current at the place, without changing them. */
  private List<Scope.Unit> recordsOf(State to) {
    return task.description.records().stream()
        .map(kind ->
            new Scope.Unit(kind.name(), task.interpreter.record(to, kind.name()), List.of()))
        .toList();
  }
}
