package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Value;

/**
 * The state while one input is being worked out. Mutable and short-lived; the interpreter turns it
 * back into a {@link State}.
 */
final class Turn {
  private static final int DEEPEST_SIDE_EFFECT = 16;

  final Rules rules;
  final String pressedOn;
  Screen screen;
  Typing typing;
  private int[] records;
  private int location;
  private int other;
  String aside;
  private Memory working;
  private Memory committed;
  int idle;
  int onScreen;
  int busy;
  int deaf;
  int keypadsRestart;
  int sincePower;
  boolean powered;
  String keypad;
  private boolean locked;
  private Optional<Departure> left;
  private String onlyCertainHolders;
  private Optional<Departure> leftNow = Optional.empty();
  private Optional<Refusal> refusal = Optional.empty();
  private final List<Stored> stored = new ArrayList<>();

  Turn(Rules rules, State state, String pressedOn) {
    this.rules = rules;
    this.pressedOn = pressedOn;
    this.screen = rules.screen(state.screen());
    this.typing = state.typing();
    this.records = state.records();
    this.location = state.location();
    this.other = state.other();
    this.aside = state.aside();
    this.working = state.working();
    this.committed = state.committed();
    Clocks clocks = state.clocks();
    this.idle = clocks.idle();
    this.onScreen = clocks.onScreen();
    this.busy = clocks.busy();
    this.deaf = clocks.deaf();
    this.keypadsRestart = clocks.keypadsRestart();
    this.sincePower = clocks.sincePower();
    this.powered = state.powered();
    this.keypad = state.keypad();
    this.locked = state.locked();
    this.left = state.left();
    this.onlyCertainHolders = state.onlyCertainHolders();
  }

  State state() {
    return new State(
        screen.name(),
        typing,
        records,
        location,
        other,
        aside,
        working,
        committed,
        new Clocks(idle, onScreen, busy, deaf, keypadsRestart, sincePower),
        powered,
        keypad,
        locked,
        left,
        onlyCertainHolders);
  }

  /** Whether a transmission is held only by the records that certainly hold it. */
  boolean onlyCertainHolders(String transmission) {
    return onlyCertainHolders.equals(transmission);
  }

  List<Stored> stored() {
    return stored;
  }

  Optional<Refusal> refusal() {
    return refusal;
  }

  Optional<Departure> leftNow() {
    return leftNow;
  }

  /** Notes a refusal that does not undo what has happened. */
  void note(Refusal reason) {
    refusal = Optional.of(reason);
  }

  Value value(Slot slot) {
    return working.get(slot);
  }

  /** The value of a slot, which must be known for what comes next. */
  Value known(Slot slot) {
    Value value = value(slot);
    if (!value.known()) {
      throw Interrupted.needs(slot);
    }
    return value;
  }

  /** Whether a slot holds {@code value}, which must be certain either way. */
  boolean holds(Slot slot, Value value) {
    Value held = value(slot);
    if (!held.known() && held.mayBe(value)) {
      throw Interrupted.needs(slot);
    }
    return held.certainly(value);
  }

  Slot slot(FieldReference reference) {
    return rules
        .slot(reference, this::record, location)
        .orElseThrow(() -> Interrupted.refused(Refusal.NOT_NOW));
  }

  void chooseRecord(String kind, int number) {
    records[rules.kind(kind)] = number;
  }

  /** Goes to a location without showing its screen yet. */
  boolean chooseLocation(int number) {
    Location place = rules.location(number);
    if (place == null) {
      return false;
    }
    location = number;
    Field field = rules.field(place.field());
    if (field.byRecord()) {
      chooseRecord(field.record(), place.record());
    }
    return true;
  }

  void chooseOther(int record) {
    other = record;
  }

  int record(int kindIndex) {
    return records[kindIndex];
  }

  void store(Slot slot, Value value, boolean sideEffect) {
    store(slot, value, sideEffect, 0);
  }

  private void store(Slot slot, Value value, boolean sideEffect, int depth) {
    if (depth > DEEPEST_SIDE_EFFECT) {
      throw Interrupted.refused(Refusal.ENDLESS);
    }
    List<Effect> consequences = slot.field().onChange();
    boolean changes = consequences.isEmpty() || !holds(slot, value);
    stored.add(new Stored(slot, value(slot), value, sideEffect));
    onlyCertainHolders = "";
    working = working.with(slot, value);
    if (rules.description.manners().keepsAtOnce()) {
      committed = committed.with(slot, value);
    }
    if (changes) {
      for (Effect effect : consequences) {
        perform(effect, depth + 1);
      }
    }
  }

  /** Does what an action says. */
  void follow(Action action) {
    go(chosen(action));
  }

  private Destination chosen(Action action) {
    for (Action.Branch branch : action.branches()) {
      if (holds(branch.when())) {
        for (Effect effect : branch.effects()) {
          perform(effect, 0);
        }
        return branch.destination();
      }
    }
    throw Interrupted.refused(Refusal.NOT_NOW);
  }

  private boolean holds(Condition condition) {
    return switch (condition) {
      case Condition.FieldIs is -> {
        Slot slot = slot(is.field());
        Value held = value(slot);
        boolean possible = false;
        for (Value value : is.values()) {
          if (held.certainly(value)) {
            yield true;
          }
          possible |= held.mayBe(value);
        }
        if (possible) {
          throw Interrupted.needs(slot);
        }
        yield false;
      }
      case Condition.RecordIs is -> records[rules.kind(is.record())] == is.number();
      case Condition.SincePowerUp since -> sincePower <= since.withinTenths();
      case Condition.Locked lock -> locked;
      case Condition.OnKeypad on -> pressedOn.equals(on.keypad());
      case Condition.Not not -> !holds(not.condition());
      case Condition.All all -> {
        for (Condition part : all.conditions()) {
          if (!holds(part)) {
            yield false;
          }
        }
        yield true;
      }
      case Condition.Any any -> {
        for (Condition part : any.conditions()) {
          if (holds(part)) {
            yield true;
          }
        }
        yield false;
      }
    };
  }

  private void perform(Effect effect, int depth) {
    switch (effect) {
      case Effect.Set set -> store(slot(set.field()), set.value(), true, depth);
      case Effect.Reset reset -> {
        Slot slot = slot(reset.field());
        store(slot, slot.field().initial(), true, depth);
      }
      case Effect.ResetRecord reset -> {
        for (Field field : rules.description.fields()) {
          if (field.record().equals(reset.record())) {
            Slot slot = slot(new FieldReference.Named(field.name()));
            store(slot, field.initial(), true, depth);
          }
        }
      }
      case Effect.ResetAll reset -> {
        for (Slot slot : rules.layout.slots()) {
          if (!reset.except().contains(slot.field().name())) {
            store(slot, slot.field().initial(), true, depth);
          }
        }
      }
      case Effect.MoveRecord move -> move(move);
      case Effect.ChooseRecord choose -> chooseRecord(choose.record(), choose.number());
      case Effect.ChooseOther choose -> {
        if (other < 0) {
          throw Interrupted.refused(Refusal.NOT_NOW);
        }
        chooseRecord(choose.record(), other);
      }
      case Effect.Keep keep -> committed = working;
      case Effect.Drop drop -> working = committed;
      case Effect.Unlock unlock -> locked = false;
    }
  }

  private void move(Effect.MoveRecord move) {
    int index = rules.kind(move.record());
    RecordKind kind = rules.kindAt(index);
    int number = records[index] + (move.move() == Effect.Move.NEXT ? 1 : -1);
    if (!kind.contains(number)) {
      if (!move.wraps()) {
        throw Interrupted.refused(Refusal.AT_THE_END);
      }
      number = number > kind.last() ? kind.first() : kind.last();
    }
    records[index] = number;
  }

  private void go(Destination first) {
    boolean wasOpen = screen.programming();
    Destination destination = first;
    for (int hops = 0; hops <= rules.description.screens().size(); hops++) {
      if (destination instanceof Destination.Leave leave) {
        leave(rules.leaving(leave.way()));
        return;
      }
      Screen next = target(destination);
      if (next.decide().isEmpty()) {
        arrive(next, wasOpen);
        return;
      }
      screen = next;
      destination = chosen(next.decide().get());
    }
    throw Interrupted.refused(Refusal.ENDLESS);
  }

  private Screen target(Destination destination) {
    return switch (destination) {
      case Destination.ToScreen to -> rules.screen(to.screen());
      case Destination.Stay stay -> screen;
      case Destination.ToLocation to -> locationScreen(location);
      case Destination.ToNeighbour neighbour -> {
        Integer number =
            neighbour.move() == Effect.Move.NEXT
                ? rules.locations.higherKey(location)
                : rules.locations.lowerKey(location);
        if (number == null || !chooseLocation(number)) {
          throw Interrupted.refused(Refusal.AT_THE_END);
        }
        yield locationScreen(number);
      }
      case Destination.Leave leave -> throw new IllegalStateException("leaving is no screen");
    };
  }

  private Screen locationScreen(int number) {
    Location place = rules.location(number);
    if (place == null) {
      throw Interrupted.refused(Refusal.NOT_NOW);
    }
    return rules.screen(place.screen());
  }

  private void arrive(Screen next, boolean wasOpen) {
    if (!wasOpen && next.programming()) {
      if (locked) {
        throw Interrupted.refused(Refusal.LOCKED);
      }
      keypad = pressedOn;
      left = Optional.empty();
    }
    screen = next;
    typing = Typing.EMPTY;
    onScreen = 0;
  }

  /** Ends programming in one of the panel's ways. */
  void leave(Leaving way) {
    if (way.saves() == Leaving.Saves.TYPED_TOO) {
      Keying.storeTyped(this);
    }
    if (way.saves() == Leaving.Saves.NOTHING) {
      working = committed;
    } else {
      committed = working;
    }
    locked |= way.locks();
    Departure departure =
        new Departure(way.name(), way.saves() != Leaving.Saves.NOTHING, way.locks(), way.safe());
    left = Optional.of(departure);
    leftNow = left;
    records = rules.firstRecords();
    location = -1;
    other = -1;
    aside = "";
    keypad = "";
    idle = 0;
    deaf = way.restartTenths();
    keypadsRestart = rules.slowestKeypadRestartTenths;
    arrive(rules.screen(way.goesTo()), true);
  }
}
