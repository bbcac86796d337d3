package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.State;
import keenward.core.progress.Progress;
import org.jspecify.annotations.Nullable;

/**
 * A* over the states of the dialogue. With a lower bound that never overestimates, the first goal
 * taken from the queue is a nearest one.
 */
final class Search {
  private static final int DEEPEST_FORK = 6;
  private static final int MOST_FORKS = 40;

  private final Task task;
  private final Scope scope;
  private final ToLongFunction<State> estimate;
  private final Predicate<State> goal;
  private final Progress progress;
  private final int most;
  private final int depth;
  private int expanded;
  private int forks;
  private boolean gaveUp;
  private boolean oneAtATime = true;

  /**
   * A search.
   *
   * @param estimate lower bound on the rest
   * @param goal where to stop
   * @param most how many states to look at before giving up
   */
  Search(
      Task task,
      Scope scope,
      ToLongFunction<State> estimate,
      Predicate<State> goal,
      int most,
      Progress progress) {
    this(task, scope, estimate, goal, most, progress, 0);
  }

  private Search(
      Task task,
      Scope scope,
      ToLongFunction<State> estimate,
      Predicate<State> goal,
      int most,
      Progress progress,
      int depth) {
    this.task = task;
    this.scope = scope;
    this.estimate = estimate;
    this.goal = goal;
    this.most = most;
    this.progress = progress;
    this.depth = depth;
  }

  /** A state that waits to be looked at, with how it was reached. */
  private record Node(
      State state,
      long reached,
      long bound,
      @Nullable Node before,
      @Nullable Edge by,
      @Nullable Fork fork) {}

  /**
   * Whether the search ended because it had looked at too much, rather than because there is no
   * way.
   */
  boolean gaveUp() {
    return gaveUp;
  }

  /** The nearest goal from a state, if there is one. */
  Optional<Path> from(State start) {
    return from(List.of(start));
  }

  /** The nearest goal from any of these states. */
  Optional<Path> from(List<State> starts) {
    Map<Standing, Long> best = new HashMap<>();
    PriorityQueue<Node> queue =
        new PriorityQueue<>((one, two) ->
            one.bound() != two.bound()
                ? Long.compare(one.bound(), two.bound())
                : Long.compare(two.reached(), one.reached()));
    for (State start : starts) {
      push(queue, best, new Node(start, 0, estimate.applyAsLong(start), null, null, null));
    }
    Memory before = starts.get(0).working();
    while (!queue.isEmpty()) {
      Node node = queue.poll();
      if (node.fork() != null) {
        resolve(node, node.fork()).ifPresent(queue::add);
        continue;
      }
      if (node.by() != null || node.before() == null) {
        Long known = best.get(new Standing(task, node.state()));
        if (known != null && known < node.reached()) {
          continue;
        }
      }
      if (goal.test(node.state())) {
        return Optional.of(path(node));
      }
      if (++expanded > most) {
        gaveUp = true;
        return Optional.empty();
      }
      if (expanded % 256 == 0) {
        progress.check("looking for the shortest keys", expanded, most);
      }
      expand(queue, best, node, before);
    }
    return Optional.empty();
  }

  private void expand(
      PriorityQueue<Node> queue, Map<Standing, Long> best, Node node, Memory before) {
    Moves moves = new Moves(task, scope, node.state()).find();
    for (Edge edge : moves.edges()) {
      long reached = node.reached() + edge.cost();
      long rest = estimate.applyAsLong(edge.after());
      if (rest < Cost.NEVER && mayFollow(node.state(), edge.after(), before)) {
        push(queue, best, new Node(edge.after(), reached, reached + rest, node, edge, null));
      }
    }
    if (depth < DEEPEST_FORK && forks < MOST_FORKS) {
      for (Fork fork : moves.forks()) {
        long rest = 0;
        for (Fork.Prong prong : fork.cases()) {
          rest = Math.max(rest, estimate.applyAsLong(prong.state()));
        }
        if (rest < Cost.NEVER) {
          forks++;
          long reached = node.reached() + fork.cost();
          queue.add(new Node(node.state(), reached, reached + rest, node, null, fork));
        }
      }
    }
  }

  private boolean mayFollow(State state, State next, Memory before) {
    return !oneAtATime
        || scope.units().size() < 2
        || scope.oneAtATime(before, state.working(), next.working());
  }

  /** Lets groups be mixed: for those that can only be done together. */
  Search mixing() {
    oneAtATime = false;
    return this;
  }

  private void push(PriorityQueue<Node> queue, Map<Standing, Long> best, Node node) {
    Standing standing = new Standing(task, node.state());
    Long known = best.get(standing);
    if (known == null || node.reached() < known) {
      best.put(standing, node.reached());
      queue.add(node);
    }
  }

  /** Finds each case its own way to one and the same goal. */
  private Optional<Node> resolve(Node node, Fork fork) {
    List<Item.Case> cases = new ArrayList<>();
    Optional<State> end = Optional.empty();
    long longest = 0;
    for (Fork.Prong prong : fork.cases()) {
      Optional<State> meeting = end;
      Predicate<State> reached =
          state ->
              goal.test(state)
                  && (meeting.isEmpty() || task.interpreter.join(meeting.get(), state).isPresent());
      Search search = new Search(task, scope, estimate, reached, most / 4, progress, depth + 1);
      Optional<Path> path = search.from(prong.state());
      if (path.isEmpty()) {
        return Optional.empty();
      }
      State there = path.get().end();
      end = end.isEmpty() ? Optional.of(there) : task.interpreter.join(end.get(), there);
      longest = Math.max(longest, path.get().cost());
      cases.add(new Item.Case(prong.values(), prong.state(), path.get().items()));
    }
    if (end.isEmpty()) {
      return Optional.empty();
    }
    List<Item> items = new ArrayList<>(fork.before());
    items.add(new Item.Split(node.state(), fork.slot(), cases, !fork.before().isEmpty()));
    Edge edge = new Edge(items, end.get(), fork.cost() + longest);
    long reached = node.reached() + longest;
    return Optional.of(new Node(end.get(), reached, reached, node.before(), edge, null));
  }

  private static Path path(Node goal) {
    List<Edge> edges = new ArrayList<>();
    Node node = goal;
    while (node.before() != null) {
      if (node.by() != null) {
        edges.add(node.by());
      }
      node = node.before();
    }
    Collections.reverse(edges);
    return new Path(node.state(), edges, goal.state(), goal.reached());
  }
}
