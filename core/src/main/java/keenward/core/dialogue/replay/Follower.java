package keenward.core.dialogue.replay;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Departure;
import keenward.core.dialogue.machine.Display;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Move;
import keenward.core.dialogue.machine.Refusal;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Instruction;
import keenward.core.dialogue.order.UnseenOverwrite;
import keenward.core.dialogue.order.WorkOrder;

/** Follows instructions in all worlds at once, as a person would who goes by the display alone. */
final class Follower {
  private static final int MOST_WORLDS = 20_000;
  private static final int MOST_OPTIONS_LISTED = 10;
  private static final int LONG_TENTHS = 100_000;

  private final Interpreter interpreter;
  private final String keypad;
  private final Memory found;
  private final Domain domain;
  private final Set<Integer> mayChange;
  private final Set<Integer> mayOverwriteUnseen = new HashSet<>();
  private final Set<Integer> halts = new HashSet<>();
  private int keys;
  private int mostWorlds = 1;

  /**
   * A follower.
   *
   * @param mayChange indices of slots that may be stored into
   */
  Follower(
      Interpreter interpreter,
      WorkOrder order,
      Memory found,
      Domain domain,
      Set<Integer> mayChange) {
    this.interpreter = interpreter;
    this.keypad = order.keypad();
    this.found = found;
    this.domain = domain;
    this.mayChange = mayChange;
    for (UnseenOverwrite overwrite : order.overwritten()) {
      mayOverwriteUnseen.add(overwrite.slot().index());
    }
  }

  int keys() {
    return keys;
  }

  int mostWorlds() {
    return mostWorlds;
  }

  Set<Integer> halts() {
    return halts;
  }

  List<World> follow(List<Instruction> instructions, List<World> worlds) {
    List<World> now = worlds;
    for (Instruction instruction : instructions) {
      List<World> next = new ArrayList<>();
      for (World world : now) {
        next.addAll(follow(instruction, look(world)));
      }
      now = merged(next, instruction.number());
    }
    return now;
  }

  private List<World> follow(Instruction instruction, World world) {
    return switch (instruction) {
      case Instruction.Step step -> step(step, world);
      case Instruction.Branch branch -> branch(branch, world);
      case Instruction.ScrollUntil scroll -> scroll(scroll, world);
      case Instruction.SwitchEach each -> switchEach(each, world);
      case Instruction.Halt halt -> halt(halt, world);
    };
  }

  /** Notes which unknown values the display shows. */
  private World look(World world) {
    Display display = display(world.state());
    if (display.unknown().isEmpty()) {
      return world;
    }
    BitSet seen = new BitSet();
    seen.or(world.seen());
    for (Slot slot : display.unknown()) {
      if (!(slot.field().type() instanceof FieldType.Code)) {
        seen.set(slot.index());
      }
    }
    return new World(world.state(), world.changed(), seen);
  }

  private Display display(State state) {
    return interpreter.display(state, keypad);
  }

  /** Joins worlds that differ in memory only. */
  List<World> merged(List<World> worlds, int number) {
    if (worlds.size() > MOST_WORLDS) {
      throw new Refuted(number, "There are too many cases to follow.");
    }
    mostWorlds = Math.max(mostWorlds, worlds.size());
    if (worlds.size() < 2) {
      return worlds;
    }
    Map<String, List<World>> byScreen = new HashMap<>();
    List<World> merged = new ArrayList<>();
    for (World world : worlds) {
      List<World> alike =
          byScreen.computeIfAbsent(world.state().screen(), screen -> new ArrayList<>());
      boolean joined = false;
      for (int index = 0; index < alike.size() && !joined; index++) {
        Optional<World> both = alike.get(index).join(world, interpreter);
        if (both.isPresent()) {
          alike.set(index, both.get());
          joined = true;
        }
      }
      if (!joined) {
        alike.add(world);
      }
    }
    byScreen.values().forEach(merged::addAll);
    return merged;
  }

  private void expect(Display expected, State state, int number) {
    Display actual = display(state);
    if (!Shown.matches(expected, actual)) {
      throw new Refuted(
          number,
          "The display shows \""
              + String.join(" / ", actual.lines())
              + "\" instead of \""
              + String.join(" / ", expected.lines())
              + "\".");
    }
  }

  // Steps

  private List<World> step(Instruction.Step step, World world) {
    expect(step.now(), world.state(), step.number());
    waits(step, world.state());
    List<World> worlds = acts(step.acts(), world, step.number());
    for (World after : worlds) {
      expect(step.then(), after.state(), step.number());
    }
    return worlds;
  }

  /**
   * The time that a step gives must be there, and where it gives none, nothing may happen at all.
   */
  private void waits(Instruction.Step step, State state) {
    int tenths =
        step.mayWaitTenths().isPresent() ? step.mayWaitTenths().getAsInt() - 1 : LONG_TENTHS;
    if (tenths <= 0) {
      return;
    }
    Move waited = interpreter.move(state, new Input.TimePasses(tenths));
    if (!waited.state().screen().equals(state.screen()) || waited.left().isPresent()) {
      throw new Refuted(step.number(), "The panel does not wait as long as the step says.");
    }
  }

  private List<World> acts(List<Act> acts, World world, int number) {
    List<World> worlds = List.of(world);
    for (Act act : acts) {
      for (Input input : inputs(act)) {
        List<World> next = new ArrayList<>();
        for (World one : worlds) {
          next.addAll(input(input, one, number));
        }
        worlds = next;
      }
    }
    return worlds;
  }

  private List<Input> inputs(Act act) {
    List<Input> inputs = new ArrayList<>();
    switch (act) {
      case Act.Press press -> {
        for (int time = 0; time < press.times(); time++) {
          inputs.add(new Input.Press(keypad, press.key()));
        }
      }
      case Act.EnterCode code -> inputs.add(new Input.Press(keypad, "code:" + code.reference()));
      case Act.Wait wait -> inputs.add(new Input.TimePasses(wait.tenths()));
      case Act.Transmit send -> {
        for (int time = 0; time < send.times(); time++) {
          inputs.add(new Input.TransmitterHeard(send.serial(), send.part()));
        }
      }
      case Act.PowerOff off -> inputs.add(new Input.PowerLost());
      case Act.PowerOn on -> inputs.add(new Input.PowerBack());
    }
    return inputs;
  }

  /** One input and the lag after it, in every case that makes a difference. */
  private List<World> input(Input input, World world, int number) {
    List<World> done = new ArrayList<>();
    List<World> waiting = new ArrayList<>();
    if (input instanceof Input.TransmitterHeard heard) {
      for (State holder : interpreter.holders(world.state(), heard)) {
        waiting.add(world.with(holder));
      }
    } else {
      waiting.add(world);
    }
    int tries = 0;
    while (!waiting.isEmpty()) {
      World one = waiting.removeLast();
      if (++tries > MOST_WORLDS) {
        throw new Refuted(number, "There are too many cases to follow.");
      }
      Move move = interpreter.move(one.state(), input);
      if (move.needs().isPresent()) {
        waiting.addAll(split(one, move.needs().get(), number));
        continue;
      }
      World after = took(input, move, one, number);
      int busy = after.state().clocks().busy();
      if (busy == 0) {
        done.add(after);
        continue;
      }
      Input lag = new Input.TimePasses(busy);
      Move waited = interpreter.move(after.state(), lag);
      if (waited.needs().isPresent()) {
        waiting.addAll(split(one, waited.needs().get(), number));
      } else {
        done.add(took(lag, waited, after, number));
      }
    }
    return done;
  }

  private List<World> split(World world, Slot slot, int number) {
    List<Value> parts = domain.parts(world.state(), slot);
    if (parts.size() < 2 && !parts.get(0).known()) {
      throw new Refuted(
          number, "What happens depends on " + slot.describe() + ", which is not known.");
    }
    List<World> worlds = new ArrayList<>();
    for (Value part : parts) {
      worlds.add(world.with(interpreter.assume(world.state(), slot, part)));
    }
    return worlds;
  }

  private World took(Input input, Move move, World before, int number) {
    if (input instanceof Input.Press) {
      keys++;
    }
    Optional<Refusal> refusal = move.refusal();
    if (refusal.isPresent() && refusal.get() != Refusal.KNOWN_ALREADY) {
      throw new Refuted(number, "The panel refuses: " + Refusals.words(refusal.get()) + ".");
    }
    boolean cut = input instanceof Input.PowerLost;
    if (cut && interpreter.programmingOpen(before.state())) {
      throw new Refuted(number, "Power is cut while programming is open.");
    }
    Optional<Departure> left = move.left();
    if (!cut && left.isPresent() && (!left.get().safe() || left.get().locked())) {
      throw new Refuted(
          number, "Programming is left by \"" + left.get().way() + "\", which is not safe.");
    }
    BitSet changed = new BitSet();
    changed.or(before.changed());
    for (Stored stored : move.stored()) {
      note(stored, before, changed, number);
    }
    return new World(move.state(), changed, before.seen());
  }

  private void note(Stored stored, World before, BitSet changed, int number) {
    int index = stored.slot().index();
    if (stored.before().certainly(stored.after())) {
      return;
    }
    if (!mayChange.contains(index)) {
      throw new Refuted(
          number,
          stored.slot().describe() + " is changed although the plan says nothing about it.");
    }
    boolean unseen =
        !found.get(index).known() && !before.changed().get(index) && !before.seen().get(index);
    if (unseen && !mayOverwriteUnseen.contains(index)) {
      throw new Refuted(
          number, stored.slot().describe() + " is overwritten unseen without being listed.");
    }
    changed.set(index);
  }

  // Branches

  private List<World> branch(Instruction.Branch branch, World world) {
    expect(branch.now(), world.state(), branch.number());
    List<World> after = new ArrayList<>();
    for (World one : shown(branch, world)) {
      Instruction.Case taken = taken(branch, one);
      after.addAll(follow(taken.instructions(), List.of(one)));
    }
    return after;
  }

  /** The worlds told apart by what the display shows in each. */
  private List<World> shown(Instruction.Branch branch, World world) {
    Slot about = branch.about();
    if (!showsUnknown(world.state(), about)) {
      return List.of(world);
    }
    List<World> worlds = new ArrayList<>();
    for (Value part : partsNamed(branch, world.state())) {
      worlds.add(world.with(interpreter.assume(world.state(), about, part)));
    }
    return worlds;
  }

  private List<Value> partsNamed(Instruction.Branch branch, State state) {
    List<Value> listed = domain.all(branch.about());
    if (!listed.isEmpty()) {
      return domain.parts(state, branch.about());
    }
    Value held = state.working().get(branch.about());
    List<Value> parts = new ArrayList<>();
    Set<Value> others = new HashSet<>();
    if (held instanceof Value.Unknown unknown) {
      others.addAll(unknown.except());
    }
    for (Instruction.Case one : branch.cases()) {
      for (Value value : one.values()) {
        if (held.mayBe(value)) {
          parts.add(value);
        }
        others.add(value);
      }
    }
    parts.add(new Value.Unknown(others));
    return parts;
  }

  private boolean showsUnknown(State state, Slot slot) {
    for (Slot shown : display(state).unknown()) {
      if (shown.index() == slot.index()) {
        return true;
      }
    }
    return false;
  }

  private Instruction.Case taken(Instruction.Branch branch, World world) {
    Display display = display(world.state());
    boolean vague = showsUnknown(world.state(), branch.about());
    Optional<Instruction.Case> taken = Optional.empty();
    for (Instruction.Case one : branch.cases()) {
      boolean fits =
          one.otherwise()
              ? taken.isEmpty()
              : !vague && Shown.matches(new Display(one.shows(), display.unknown()), display);
      if (fits) {
        if (taken.isPresent()) {
          throw new Refuted(branch.number(), "The display does not tell the cases apart.");
        }
        taken = Optional.of(one);
      }
    }
    return taken.orElseThrow(() ->
        new Refuted(
            branch.number(),
            "No case is for a display of \"" + String.join(" / ", display.lines()) + "\"."));
  }

  // Scrolling and switching by what is shown

  private List<World> scroll(Instruction.ScrollUntil scroll, World world) {
    expect(scroll.now(), world.state(), scroll.number());
    List<World> after = new ArrayList<>();
    for (World one : told(world, scroll.about(), scroll.number())) {
      after.addAll(scrolled(scroll, one));
    }
    return after;
  }

  private List<World> scrolled(Instruction.ScrollUntil scroll, World world) {
    if (display(world.state()).lines().equals(scroll.then().lines())) {
      return List.of(world);
    }
    Value shows = world.state().working().get(scroll.about());
    for (Instruction.Way way : scroll.ways()) {
      if (way.from().contains(shows)) {
        List<World> worlds = List.of(world);
        for (int time = 0; time < way.atMost(); time++) {
          worlds = acts(List.of(way.key()), worlds.get(0), scroll.number());
          if (worlds.size() == 1
              && display(worlds.get(0).state()).lines().equals(scroll.then().lines())) {
            return worlds;
          }
        }
      }
    }
    throw new Refuted(
        scroll.number(),
        "Scrolling from what "
            + scroll.about().describe()
            + " may hold never shows what it should.");
  }

  private List<World> switchEach(Instruction.SwitchEach each, World world) {
    expect(each.now(), world.state(), each.number());
    List<World> after = new ArrayList<>();
    for (World one : options(each, world)) {
      long bits =
          one.state().working().get(each.about()) instanceof Value.Members members
              ? members.bits()
              : 0;
      List<Act> acts = new ArrayList<>();
      for (Instruction.Switch option : each.switches()) {
        acts.addAll(option.first());
        if ((((bits >>> option.index()) & 1L) != 0) != option.wanted()) {
          acts.add(option.toggle());
        }
      }
      for (World done : acts(acts, one, each.number())) {
        expect(each.then(), done.state(), each.number());
        after.add(done);
      }
    }
    return after;
  }

  /**
   * Worlds with every set of options, or, where there are too many, with none, with all and with
   * each one alone: the interpreter switches one bit at a time without looking at the others.
   */
  private List<World> options(Instruction.SwitchEach each, World world) {
    if (world.state().working().get(each.about()).known()) {
      return List.of(world);
    }
    if (!(each.about().field().type() instanceof FieldType.OptionSet set)
        || set.options().size() <= MOST_OPTIONS_LISTED) {
      return told(world, each.about(), each.number());
    }
    if (!showsUnknown(world.state(), each.about())) {
      throw new Refuted(each.number(), each.about().describe() + " is not shown.");
    }
    int size = set.options().size();
    List<World> worlds = new ArrayList<>();
    long all = size == 64 ? -1L : (1L << size) - 1;
    worlds.add(assuming(world, each.about(), new Value.Members(0)));
    worlds.add(assuming(world, each.about(), new Value.Members(all)));
    for (int place = 0; place < size; place++) {
      worlds.add(assuming(world, each.about(), new Value.Members(1L << place)));
    }
    return worlds;
  }

  private World assuming(World world, Slot slot, Value value) {
    return world.with(interpreter.assume(world.state(), slot, value));
  }

  /** The worlds told apart by what the display shows for a field. */
  private List<World> told(World world, Slot slot, int number) {
    if (world.state().working().get(slot).known()) {
      return List.of(world);
    }
    List<Value> values = domain.all(slot);
    if (!showsUnknown(world.state(), slot) || values.isEmpty()) {
      throw new Refuted(number, slot.describe() + " is not shown.");
    }
    List<World> worlds = new ArrayList<>();
    for (Value value : values) {
      if (world.state().working().get(slot).mayBe(value)) {
        worlds.add(assuming(world, slot, value));
      }
    }
    return worlds;
  }

  // Stopping early

  private List<World> halt(Instruction.Halt halt, World world) {
    halts.add(halt.number());
    for (World left : acts(halt.leave(), world, halt.number())) {
      State state = left.state();
      if (interpreter.programmingOpen(state)
          || state.left().filter(Departure::safe).isEmpty()
          || state.locked()) {
        throw new Refuted(halt.number(), "Stopping there does not leave safely.");
      }
    }
    return List.of();
  }
}
