package keenward.core.dialogue.replay;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Assumption;
import keenward.core.dialogue.order.Group;
import keenward.core.dialogue.order.Instruction;
import keenward.core.dialogue.order.OrderWords;
import keenward.core.dialogue.order.PassingChange;
import keenward.core.dialogue.order.Proof;
import keenward.core.dialogue.order.StoppingPlace;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.progress.Progress;

/**
 * Follows an order to the letter on the described panel, for everything that its memory may hold
 * where it is not known, and says whether it ends where it should.
 */
public final class Replay {
  private final Interpreter interpreter;
  private final WorkOrder order;
  private final Memory found;
  private final Map<Slot, Value> planned;
  private final Progress progress;
  private final Follower follower;
  private final BitSet plannedSlots = new BitSet();
  private final List<List<World>> starts = new ArrayList<>();

  Replay(
      Interpreter interpreter,
      Memory found,
      WorkOrder order,
      Map<Slot, Value> planned,
      Progress progress) {
    this.interpreter = interpreter;
    this.order = order;
    this.planned = planned;
    this.progress = progress;
    Memory assumed = found;
    for (Assumption assumption : order.assumptions()) {
      assumed = assumed.with(assumption.slot(), assumption.holds());
    }
    this.found = assumed;
    for (Slot slot : planned.keySet()) {
      plannedSlots.set(slot.index());
    }
    this.follower =
        new Follower(interpreter, order, this.found, new Domain(interpreter, planned), allowed());
  }

  /** Replays {@code order} on a panel of this description that holds {@code found}. */
  public static Proof run(
      PanelDescription description,
      Memory found,
      WorkOrder order,
      Map<Slot, Value> planned,
      Progress progress) {
    return run(new Interpreter(description), found, order, planned, progress);
  }

  /** The same with an interpreter that is at hand already. */
  public static Proof run(
      Interpreter interpreter,
      Memory found,
      WorkOrder order,
      Map<Slot, Value> planned,
      Progress progress) {
    return new Replay(interpreter, found, order, planned, progress).run();
  }

  private Set<Integer> allowed() {
    Set<Integer> allowed = new HashSet<>();
    for (Slot slot : planned.keySet()) {
      allowed.add(slot.index());
    }
    for (PassingChange change : order.passing()) {
      allowed.add(change.slot().index());
    }
    return allowed;
  }

  /**
   * What comes of following other instructions in place of one group's.
   *
   * @param group place of the group in the order
   */
  Slips.Outcome outcome(int group, List<Instruction> instead) {
    List<World> before = upTo(group);
    List<World> after = upTo(group + 1);
    List<World> worlds;
    try {
      worlds = follower.follow(instead, before);
      if (sameStates(worlds, after)) {
        return Slips.Outcome.HARMLESS;
      }
      for (Group later : order.groups().subList(group + 1, order.groups().size())) {
        worlds = follower.follow(later.instructions(), worlds);
      }
    } catch (Refuted refuted) {
      return Slips.Outcome.SHOWN;
    }
    try {
      for (World world : worlds) {
        ends(world);
      }
      return Slips.Outcome.HARMLESS;
    } catch (Refuted refuted) {
      return Slips.Outcome.ONLY_IN_THE_END;
    }
  }

  private static boolean sameStates(List<World> one, List<World> other) {
    Set<State> states = new HashSet<>();
    for (World world : one) {
      states.add(world.state());
    }
    Set<State> others = new HashSet<>();
    for (World world : other) {
      others.add(world.state());
    }
    return states.equals(others);
  }

  /** The worlds before a group, when everything before it was done as written. */
  private List<World> upTo(int group) {
    if (starts.isEmpty()) {
      starts.add(List.of(World.of(interpreter.start(found))));
    }
    while (starts.size() <= group) {
      starts.add(
          follower.follow(order.groups().get(starts.size() - 1).instructions(), starts.getLast()));
    }
    return starts.get(group);
  }

  private Proof run() {
    List<World> worlds = List.of(World.of(interpreter.start(found)));
    try {
      int done = 0;
      for (Group group : order.groups()) {
        progress.check("replaying " + group.title(), done++, order.groups().size());
        worlds = follower.follow(group.instructions(), worlds);
        if (group.stop().isPresent()) {
          // From here on both are followed: going on at once, and going on after a break.
          List<World> both = new ArrayList<>(worlds);
          both.addAll(interrupted(group.stop().get(), worlds));
          worlds = follower.merged(both, 0);
        }
      }
      for (World world : worlds) {
        ends(world);
      }
      return proof(Proof.Verdict.PROVED, List.of(), worlds);
    } catch (Refuted refuted) {
      return proof(
          Proof.Verdict.REFUTED,
          List.of(new Proof.Refutation(refuted.atInstruction(), refuted.what())),
          List.of());
    }
  }

  private Proof proof(
      Proof.Verdict verdict, List<Proof.Refutation> refutations, List<World> worlds) {
    Optional<Memory> memory = Optional.empty();
    Optional<State> all = Optional.empty();
    for (World world : worlds) {
      all =
          all.isEmpty()
              ? Optional.of(world.state())
              : all.flatMap(state -> interpreter.join(state, world.state()));
      memory = all.map(State::committed);
    }
    return new Proof(
        verdict,
        refutations,
        memory,
        follower.keys(),
        follower.mostWorlds(),
        List.copyOf(new TreeSet<>(follower.halts())));
  }

  /** Leaves at a stopping place, and comes back; what was entered must be kept. */
  private List<World> interrupted(StoppingPlace stop, List<World> worlds) {
    List<World> left = follower.follow(stop.leave(), worlds);
    for (World world : left) {
      if (!leftSafely(world.state())) {
        throw new Refuted(0, "The way out at " + stop.screen() + " does not leave safely.");
      }
    }
    List<World> back = follower.follow(stop.comeBack(), left);
    for (World world : back) {
      if (!Shown.matches(stop.shows(), interpreter.display(world.state(), order.keypad()))) {
        throw new Refuted(0, "The way back to " + stop.screen() + " leads elsewhere.");
      }
    }
    return back;
  }

  private boolean leftSafely(State state) {
    return !interpreter.programmingOpen(state)
        && state.left().filter(left -> left.safe() && !left.locked()).isPresent()
        && !state.locked()
        && state.working().equals(state.committed());
  }

  private void ends(World world) {
    State state = world.state();
    if (order.groups().isEmpty()) {
      holdsPlan(state.committed());
      return;
    }
    if (!leftSafely(state)) {
      throw new Refuted(0, "It does not end by leaving programming safely with all saved.");
    }
    holdsPlan(state.committed());
    for (Slot slot : interpreter.layout().slots()) {
      if (!plannedSlots.get(slot.index())) {
        untouched(world, slot);
      }
    }
  }

  private void holdsPlan(Memory memory) {
    for (Map.Entry<Slot, Value> entry : planned.entrySet()) {
      Value held = memory.get(entry.getKey());
      if (!held.certainly(entry.getValue())) {
        throw new Refuted(
            0,
            entry.getKey().describe()
                + " ends as "
                + OrderWords.value(entry.getKey(), held)
                + " instead of "
                + OrderWords.value(entry.getKey(), entry.getValue())
                + ".");
      }
    }
  }

  private void untouched(World world, Slot slot) {
    Value before = found.get(slot);
    Value after = world.state().committed().get(slot);
    boolean same = before.known() ? after.certainly(before) : !world.changed().get(slot.index());
    if (!same && !announced(slot, after)) {
      throw new Refuted(
          0,
          slot.describe()
              + " changes to "
              + OrderWords.value(slot, after)
              + " although the plan says nothing about it.");
    }
  }

  private boolean announced(Slot slot, Value after) {
    for (PassingChange change : order.passing()) {
      if (change.slot().index() == slot.index()) {
        return !change.after().known() || change.after().equals(after);
      }
    }
    return false;
  }
}
