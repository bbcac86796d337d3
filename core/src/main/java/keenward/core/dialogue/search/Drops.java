package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Manners;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Move;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Setback;

/** What is lost when a session drops out, and where to go on. */
final class Drops {
  private final Task task;
  private final List<Mark> marks;
  private final int[] everStored;

  /** Whether memories may differ in values that are unknown in one and narrowed down in another. */
  private final boolean vague;

  /** Idle time that the slowest key has used up already when the next one is heard. */
  private final int longestBusy;

  /**
   * Idle time that may be used up when a screen is reached, be it that the one before leads on by
   * itself.
   */
  private final int longestIdle;

  /**
   * A place to go on from.
   *
   * @param number number of the instruction
   * @param memory the memory before it
   * @param groupStart whether a group starts with it
   */
  record Mark(int number, Memory memory, boolean groupStart) {}

  Drops(Task task, List<Mark> marks, Set<Integer> everStored) {
    this.task = task;
    int longest = 0;
    for (int held : task.keypad.keys().values()) {
      longest = Math.max(longest, held);
    }
    this.longestBusy = longest + task.keypad.lagTenths();
    int byItself = 0;
    for (Screen screen : task.description.screens().values()) {
      if (screen.programming() && screen.after().isPresent()) {
        byItself = Math.max(byItself, screen.after().get().tenths());
      }
    }
    this.longestIdle = longestBusy + byItself;
    this.marks = List.copyOf(marks);
    this.everStored = everStored.stream().mapToInt(Integer::intValue).toArray();
    boolean unknown = false;
    for (int index : everStored) {
      unknown |= !task.found.get(index).known();
    }
    this.vague = unknown;
  }

  /** How long one may wait in a state before something happens by itself, if anything does. */
  OptionalInt mayWait(State state) {
    int least = Integer.MAX_VALUE;
    Manners manners = task.description.manners();
    Screen screen = task.description.screens().get(state.screen());
    if (screen == null) {
      return OptionalInt.empty();
    }
    boolean listening = screen.entry().filter(Entry.Hear.class::isInstance).isPresent();
    if (screen.programming()
        && manners.idle().isPresent()
        && manners.idleTenths() > 0
        && !listening) {
      least = Math.min(least, manners.idleTenths() - Math.max(longestIdle, state.clocks().idle()));
    }
    if (screen.entry().isPresent() && screen.entry().get() instanceof Entry.Hear hear) {
      least = Math.min(least, hear.waitTenths() - longestBusy);
    }
    if (screen.after().isPresent()) {
      least = Math.min(least, screen.after().get().tenths() - longestBusy);
    }
    return least == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(Math.max(0, least));
  }

  /** What follows when no key comes in any of these states; absent where nothing drops out. */
  Optional<Setback> leftAlone(int number, List<State> states) {
    Manners manners = task.description.manners();
    if (manners.idle().isEmpty() || manners.idleTenths() == 0) {
      return Optional.empty();
    }
    List<Fall> falls = new ArrayList<>();
    for (State state : states) {
      Screen screen = task.description.screens().get(state.screen());
      if (task.interpreter.programmingOpen(state)
          && screen != null
          && screen.entry().filter(Entry.Hear.class::isInstance).isEmpty()) {
        Move move = task.interpreter.move(state, new Input.TimePasses(manners.idleTenths()));
        falls.add(new Fall(state, move));
      }
    }
    return falls.isEmpty() ? Optional.empty() : Optional.of(setback(number, falls));
  }

  /** What follows when power fails in any of these states. */
  Setback powerFails(int number, List<State> states) {
    List<Fall> falls = new ArrayList<>();
    for (State state : states) {
      falls.add(new Fall(state, task.interpreter.move(state, new Input.PowerLost())));
    }
    return setback(number, falls);
  }

  /** A drop-out: where it happened and what it did. */
  private record Fall(State before, Move move) {}

  private Setback setback(int number, List<Fall> falls) {
    Set<Integer> lost = new TreeSet<>();
    Set<Integer> half = new TreeSet<>();
    OptionalInt goOn = OptionalInt.of(Integer.MAX_VALUE);
    Map<Memory, OptionalInt> places = new HashMap<>();
    for (Fall fall : falls) {
      if (fall.move().needs().isPresent()) {
        goOn = OptionalInt.empty();
        continue;
      }
      Memory kept = fall.move().state().committed();
      compare(fall.before(), kept, lost, half);
      OptionalInt place = places.computeIfAbsent(kept, memory -> place(number, memory));
      goOn =
          place.isEmpty() || goOn.isEmpty()
              ? OptionalInt.empty()
              : OptionalInt.of(Math.min(goOn.getAsInt(), place.getAsInt()));
    }
    return new Setback(slots(lost), slots(half), falls.isEmpty() ? OptionalInt.of(number) : goOn);
  }

  private void compare(State before, Memory kept, Set<Integer> lost, Set<Integer> half) {
    for (int index : everStored) {
      Value value = kept.get(index);
      if (value.equals(before.working().get(index))) {
        continue;
      }
      if (value.equals(before.committed().get(index))) {
        lost.add(index);
      } else if (!task.right(kept, task.layout.slot(index))) {
        half.add(index);
      }
    }
  }

  /**
   * The instruction before which the memory is what was kept: this one, or a group's first, or any.
   */
  private OptionalInt place(int number, Memory kept) {
    OptionalInt any = OptionalInt.empty();
    OptionalInt start = OptionalInt.empty();
    for (Mark mark : marks) {
      if (mark.number() <= number && alike(mark.memory(), kept)) {
        any = OptionalInt.of(mark.number());
        if (mark.groupStart()) {
          start = any;
        }
      }
    }
    if (any.isPresent() && any.getAsInt() == number) {
      return any;
    }
    return start.isPresent() ? start : any;
  }

  private boolean alike(Memory one, Memory two) {
    if (!vague) {
      return one.equals(two);
    }
    for (int index : everStored) {
      if (!one.get(index).equals(two.get(index))) {
        return false;
      }
    }
    return true;
  }

  private List<Slot> slots(Set<Integer> indices) {
    List<Slot> slots = new ArrayList<>();
    for (int index : indices) {
      slots.add(task.layout.slot(index));
    }
    return slots;
  }
}
