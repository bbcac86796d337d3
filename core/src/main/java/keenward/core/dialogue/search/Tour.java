package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;

/**
 * A lower bound on what it still costs to make a scope's slots right, and to leave where that is
 * asked for. Each wrong slot has a last store that makes it right. Between two such stores, one
 * after the other, lie at least the way over the screens from where the first leaves one to where
 * the second is entered, and the keys that enter it. The cheapest tour of the slots by these
 * distances is found once for every subset (Bellman, Held and Karp) where they are few; where they
 * are many, each slot counts its cheapest predecessor. Slots that may become right as a side effect
 * count nothing.
 */
final class Tour {
  private static final int MOST_FOR_TOURS = 13;

  private final Estimate estimate;
  private final Task task;
  private final ScreenGraph graph;
  private final boolean leaving;
  private final List<Slot> slots = new ArrayList<>();
  private final long[][] between;
  private final long[] exit;
  private final long[][] rest;

  /**
   * Distances and tours for a scope.
   *
   * @param start state whose memory says what is wrong and what is held
   * @param leaving whether programming is to be left as well
   */
  Tour(Estimate estimate, Scope scope, State start, boolean leaving) {
    this.estimate = estimate;
    this.task = estimate.task();
    this.graph = estimate.graph();
    this.leaving = leaving;
    for (Slot slot : scope.wrong(start.working())) {
      if (!estimate.free(slot)) {
        slots.add(slot);
      }
    }
    int size = slots.size();
    this.exit = new long[size];
    this.between = new long[size][size];
    for (int from = 0; from < size; from++) {
      exit[from] = exit(slots.get(from));
      for (int to = 0; to < size; to++) {
        between[from][to] =
            from == to ? Cost.NEVER : between(slots.get(from), slots.get(to), start);
      }
    }
    this.rest = size <= MOST_FOR_TOURS ? tours() : new long[0][];
  }

  /** The slots that it counts. */
  List<Slot> slots() {
    return slots;
  }

  /** At least this much from one slot's store to another's. */
  long between(int from, int to) {
    return between[from][to];
  }

  private long exit(Slot slot) {
    if (task.facts.leavingStoresTyped()) {
      return 0;
    }
    long least = Cost.NEVER;
    for (int screen : estimate.screens(slot)) {
      for (int after : graph.afterEntering(screen)) {
        least = Math.min(least, graph.leaving(after));
      }
    }
    return least;
  }

  private long between(Slot from, Slot to, State start) {
    String record = to.field().record();
    boolean other =
        !record.isEmpty() && record.equals(from.field().record()) && from.record() != to.record();
    int[] screens = estimate.screens(to);
    long[] entering = estimate.entering(to, start.working().get(to));
    long least = Cost.NEVER;
    for (int entered : estimate.screens(from)) {
      for (int after : graph.afterEntering(entered)) {
        for (int place = 0; place < screens.length; place++) {
          long way =
              other
                  ? graph.distanceChoosing(
                      record, after, screens[place], from.record(), to.record())
                  : graph.distance(after, screens[place]);
          least = Math.min(least, Cost.sum(way, entering[place]));
        }
      }
    }
    return least;
  }

  /** For each set of slots still to do and each slot just done, the cheapest tour of the set. */
  private long[][] tours() {
    int size = slots.size();
    long[][] best = new long[1 << size][size];
    for (int from = 0; from < size; from++) {
      best[0][from] = leaving ? exit[from] : 0;
    }
    for (int set = 1; set < best.length; set++) {
      for (int from = 0; from < size; from++) {
        long least = Cost.NEVER;
        for (int to = 0; to < size; to++) {
          if ((set >> to & 1) != 0) {
            least = Math.min(least, Cost.sum(between[from][to], best[set & ~(1 << to)][to]));
          }
        }
        best[set][from] = least;
      }
    }
    return best;
  }

  /** At least this much from a state. */
  long remaining(State state) {
    boolean[] wrong = new boolean[slots.size()];
    int set = 0;
    int count = 0;
    for (int index = 0; index < wrong.length; index++) {
      if (!task.right(state.working(), slots.get(index))) {
        wrong[index] = true;
        set |= slots.size() <= MOST_FOR_TOURS ? 1 << index : 0;
        count++;
      }
    }
    if (count == 0) {
      return leaving ? leaving(state) : 0;
    }
    return rest.length > 0 ? byTours(state, set) : byPredecessors(state, wrong);
  }

  private long leaving(State state) {
    return Left.safely(task, state) ? 0 : graph.leaving(graph.index(state.screen()));
  }

  private long byTours(State state, int set) {
    int here = graph.index(state.screen());
    long least = Cost.NEVER;
    for (int first = 0; first < slots.size(); first++) {
      if ((set >> first & 1) != 0) {
        long after = rest[set & ~(1 << first)][first];
        if (after < least) {
          least = Math.min(least, Cost.sum(first(state, here, slots.get(first)), after));
        }
      }
    }
    return least;
  }

  private long byPredecessors(State state, boolean[] wrong) {
    int here = graph.index(state.screen());
    long sum = 0;
    long saved = Cost.NEVER;
    long least = Cost.NEVER;
    for (int to = 0; to < wrong.length; to++) {
      if (!wrong[to]) {
        continue;
      }
      long before = Cost.NEVER;
      for (int from = 0; from < wrong.length; from++) {
        if (wrong[from]) {
          before = Math.min(before, between[from][to]);
        }
      }
      long first = first(state, here, slots.get(to));
      before = Math.min(before, Cost.NEVER / 1024);
      sum = Cost.sum(sum, before);
      saved = Math.min(saved, first - before);
      least = Math.min(least, leaving ? exit[to] : 0);
    }
    return Math.min(Cost.NEVER, Math.max(0, Cost.sum(sum + saved, least)));
  }

  /** At least this much until a slot is entered right from here. */
  long first(State state, int here, Slot slot) {
    String record = slot.field().record();
    int current = record.isEmpty() ? slot.record() : task.interpreter.record(state, record);
    Value held = state.working().get(slot);
    int[] screens = estimate.screens(slot);
    long[] entering = estimate.entering(slot, held);
    long least = Cost.NEVER;
    for (int place = 0; place < screens.length; place++) {
      long way =
          current != slot.record()
              ? graph.distanceChoosing(record, here, screens[place], current, slot.record())
              : graph.distance(here, screens[place]);
      least = Math.min(least, Cost.sum(way, entering[place]));
    }
    return least;
  }

  /**
   * At least this much for all slots, entered from the store of a slot of another record or none.
   */
  long enteredFrom(Tour all) {
    if (slots.isEmpty()) {
      return 0;
    }
    long least = Cost.NEVER;
    long sum = 0;
    for (int first = 0; first < slots.size(); first++) {
      long entry = all.entry(slots.get(first));
      if (rest.length > 0) {
        int others = ((1 << slots.size()) - 1) & ~(1 << first);
        least = Math.min(least, Cost.sum(entry, rest[others][first]));
      } else {
        sum = Cost.sum(sum, predecessor(first));
        least = Math.min(least, entry - predecessor(first));
      }
    }
    if (rest.length == 0) {
      least = Math.max(0, sum + least);
    }
    // Reached from no other group: then this one comes first, and nothing is claimed for it here.
    return least >= Cost.NEVER ? 0 : least;
  }

  private long predecessor(int slot) {
    long before = Cost.NEVER / 1024;
    for (int from = 0; from < slots.size(); from++) {
      before = Math.min(before, between[from][slot]);
    }
    return before;
  }

  /** At least this much to enter a slot after a slot of another group. */
  private long entry(Slot slot) {
    int to = slots.indexOf(slot);
    long least = Cost.NEVER;
    for (int from = 0; from < slots.size(); from++) {
      Slot before = slots.get(from);
      if (before.record() != slot.record()
          || !before.field().record().equals(slot.field().record())) {
        least = Math.min(least, between[from][to]);
      }
    }
    return least;
  }

  /** At least this much from any of the slots' stores until programming is left. */
  long cheapestExit() {
    long least = Cost.NEVER;
    for (long one : exit) {
      least = Math.min(least, one);
    }
    return least >= Cost.NEVER ? 0 : least;
  }

  /** An order of the slots that goes to the nearest next, by these distances. */
  List<Slot> nearestFirst(State state) {
    List<Slot> tour = new ArrayList<>();
    boolean[] done = new boolean[slots.size()];
    int here = graph.index(state.screen());
    int last = -1;
    for (int count = 0; count < slots.size(); count++) {
      int nearest = -1;
      long least = Long.MAX_VALUE;
      for (int to = 0; to < slots.size(); to++) {
        if (!done[to]) {
          long way = last < 0 ? first(state, here, slots.get(to)) : between[last][to];
          if (way < least) {
            least = way;
            nearest = to;
          }
        }
      }
      done[nearest] = true;
      last = nearest;
      tour.add(slots.get(nearest));
    }
    return tour;
  }
}
