package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;
import keenward.core.dialogue.order.Group;

/** Cuts a path into the way in, groups with a stopping place after each, and the way out. */
final class Grouping {
  private final Task task;
  private final Ways ways;
  private final Path path;
  private final List<State> states = new ArrayList<>();

  Grouping(Task task, Ways ways, Path path) {
    this.task = task;
    this.ways = ways;
    this.path = path;
    states.add(path.from());
    for (Edge edge : path.edges()) {
      states.add(edge.after());
    }
  }

  /**
   * A group before it is put into words.
   *
   * @param edges its moves
   * @param leave how to leave after it, if one may stop there
   * @param comeBack how to come back there
   */
  record Part(
      Group.Part part,
      String record,
      int number,
      List<Edge> edges,
      Optional<State> stop,
      List<Item> leave,
      List<Item> comeBack) {
    Part {
      edges = List.copyOf(edges);
      leave = List.copyOf(leave);
      comeBack = List.copyOf(comeBack);
    }
  }

  /** A run of moves that store into one unit, or a place between. */
  private record Block(String record, int number, int firstEdge, int lastEdge, boolean together) {}

  /** A place to stop: after so many edges. */
  private record Cut(int edges, Path leave, Path comeBack) {}

  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    List<Block> blocks = blocks();
    int from = wayIn(blocks);
    if (from > 0) {
      parts.add(plain(Group.Part.WAY_IN, 0, from));
    }
    int index = 0;
    while (index < blocks.size()) {
      Block block = blocks.get(index);
      Optional<Cut> cut = cut(blocks, index);
      while (cut.isEmpty() && index + 1 < blocks.size()) {
        // Nowhere to stop in between: the two have to be done in one go.
        index++;
        block = together(block, blocks.get(index));
        cut = cut(blocks, index);
      }
      int to = cut.map(Cut::edges).orElse(block.lastEdge() + 1);
      parts.add(
          new Part(
              part(block),
              block.record(),
              block.number(),
              path.edges().subList(from, to),
              cut.map(place -> states.get(place.edges())),
              cut.map(place -> place.leave().items()).orElse(List.of()),
              cut.map(place -> place.comeBack().items()).orElse(List.of())));
      from = to;
      index++;
    }
    if (from < path.edges().size()) {
      parts.add(plain(Group.Part.WAY_OUT, from, path.edges().size()));
    }
    return parts;
  }

  private Part plain(Group.Part part, int from, int to) {
    return new Part(
        part, "", 0, path.edges().subList(from, to), Optional.empty(), List.of(), List.of());
  }

  private static Group.Part part(Block block) {
    if (block.together()) {
      return Group.Part.RECORDS_TOGETHER;
    }
    return block.record().isEmpty() ? Group.Part.SETTINGS : Group.Part.RECORD;
  }

  private static Block together(Block first, Block second) {
    boolean same = first.record().equals(second.record()) && first.number() == second.number();
    return new Block(
        first.record().isEmpty() ? second.record() : first.record(),
        first.record().isEmpty() ? second.number() : first.number(),
        first.firstEdge(),
        second.lastEdge(),
        !same || first.together());
  }

  private int wayIn(List<Block> blocks) {
    int firstStore = blocks.isEmpty() ? path.edges().size() : blocks.get(0).firstEdge();
    for (int edge = 0; edge < firstStore; edge++) {
      if (task.interpreter.programmingOpen(states.get(edge + 1))) {
        return edge + 1;
      }
    }
    return 0;
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    for (int index = 0; index < path.edges().size(); index++) {
      for (Slot slot : stored(path.edges().get(index))) {
        String record = slot.field().record();
        Block last = blocks.isEmpty() ? null : blocks.get(blocks.size() - 1);
        if (last != null && last.record().equals(record) && last.number() == slot.record()) {
          blocks.set(
              blocks.size() - 1,
              new Block(record, slot.record(), last.firstEdge(), index, last.together()));
        } else if (last != null && last.lastEdge() == index) {
          blocks.set(
              blocks.size() - 1,
              together(last, new Block(record, slot.record(), index, index, false)));
        } else {
          blocks.add(new Block(record, slot.record(), index, index, false));
        }
      }
    }
    return merged(blocks);
  }

  /** Units that come up again later are done together with what lies between. */
  private List<Block> merged(List<Block> blocks) {
    Map<String, Integer> lastSeen = new HashMap<>();
    for (int index = 0; index < blocks.size(); index++) {
      lastSeen.put(blocks.get(index).record() + " " + blocks.get(index).number(), index);
    }
    List<Block> merged = new ArrayList<>();
    int index = 0;
    while (index < blocks.size()) {
      Block block = blocks.get(index);
      int end = lastSeen.getOrDefault(block.record() + " " + block.number(), index);
      while (index < end) {
        index++;
        Block next = blocks.get(index);
        end = Math.max(end, lastSeen.getOrDefault(next.record() + " " + next.number(), index));
        block = together(block, next);
      }
      merged.add(block);
      index++;
    }
    return merged;
  }

  private static List<Slot> stored(Edge edge) {
    List<Slot> slots = new ArrayList<>();
    for (Stored stored : Stores.of(edge.items())) {
      if (!stored.before().certainly(stored.after())) {
        slots.add(stored.slot());
      }
    }
    return slots;
  }

  /** The place between this block and the next from which leaving is shortest. */
  private Optional<Cut> cut(List<Block> blocks, int index) {
    int earliest = blocks.get(index).lastEdge() + 1;
    int latest =
        index + 1 < blocks.size() ? blocks.get(index + 1).firstEdge() : path.edges().size();
    Optional<Cut> best = Optional.empty();
    for (int edges = earliest; edges <= latest; edges++) {
      State state = states.get(edges);
      if (!task.interpreter.programmingOpen(state)) {
        continue;
      }
      Optional<Path> leave = ways.out(state);
      if (leave.isEmpty()
          || (best.isPresent() && best.get().leave().cost() <= leave.get().cost())) {
        continue;
      }
      Optional<Path> comeBack = comeBack(leave.get().end(), state, edges);
      if (comeBack.isPresent()) {
        best = Optional.of(new Cut(edges, leave.get(), comeBack.get()));
      }
    }
    return best;
  }

  private Optional<Path> comeBack(State rest, State place, int edges) {
    Optional<Path> look = ways.backToLook(rest, place);
    if (look.isPresent() && goesOnAlike(look.get().end(), edges)) {
      return look;
    }
    return ways.back(rest, place);
  }

  /** Whether all moves that follow show and do the same from there. */
  private boolean goesOnAlike(State from, int firstEdge) {
    State state = from;
    for (int index = firstEdge; index < path.edges().size(); index++) {
      if (state.alikeBesidesMemory(states.get(index))
          && state.working().equals(states.get(index).working())) {
        return true;
      }
      for (Item item : path.edges().get(index).items()) {
        if (!(item instanceof Item.Do deed)
            || !deed.from().equals(deed.sample())
            || !lines(state).equals(lines(deed.from()))) {
          return false;
        }
        Run run = Acts.replay(task, state, deed.acts());
        if (!run.alive() || !lines(run.state()).equals(lines(deed.after()))) {
          return false;
        }
        state = run.state();
      }
    }
    return Left.safely(task, state) && state.working().equals(path.end().working());
  }

  private List<String> lines(State state) {
    return task.interpreter.display(state, task.keypad.name()).lines();
  }
}
