package keenward.core.dialogue.machine;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A state of the panel. Immutable, with value equality: two states that are equal behave alike for
 * ever.
 */
public final class State {
  private final String screen;
  private final Typing typing;
  private final int[] records;
  private final int location;
  private final int other;
  private final String aside;
  private final Memory working;
  private final Memory committed;
  private final Clocks clocks;
  private final boolean powered;
  private final String keypad;
  private final boolean locked;
  private final Optional<Departure> left;
  private final String onlyCertainHolders;
  private final int hash;

  State(
      String screen,
      Typing typing,
      int[] records,
      int location,
      int other,
      String aside,
      Memory working,
      Memory committed,
      Clocks clocks,
      boolean powered,
      String keypad,
      boolean locked,
      Optional<Departure> left,
      String onlyCertainHolders) {
    this.onlyCertainHolders = onlyCertainHolders;
    this.screen = screen;
    this.typing = typing;
    this.records = records.clone();
    this.location = location;
    this.other = other;
    this.aside = aside;
    this.working = working;
    this.committed = committed;
    this.clocks = clocks;
    this.powered = powered;
    this.keypad = keypad;
    this.locked = locked;
    this.left = left;
    int mixed = screen.hashCode();
    mixed = mixed * 31 + typing.hashCode();
    mixed = mixed * 31 + Arrays.hashCode(records);
    mixed = mixed * 31 + location;
    mixed = mixed * 31 + working.hashCode();
    mixed = mixed * 31 + committed.hashCode();
    mixed = mixed * 31 + clocks.hashCode();
    this.hash = mixed * 31 + aside.hashCode();
  }

  /** Name of the screen. */
  public String screen() {
    return screen;
  }

  /** What is being entered. */
  public Typing typing() {
    return typing;
  }

  /** Number of the current record of the kind at {@code kindIndex} of the description's kinds. */
  public int record(int kindIndex) {
    return records[kindIndex];
  }

  int[] records() {
    return records.clone();
  }

  /** Number of the location gone to, or -1. */
  public int location() {
    return location;
  }

  /** Number of the record that knows the transmitter heard last, or -1. */
  public int other() {
    return other;
  }

  /** What was kept aside to be repeated, or empty. */
  public String aside() {
    return aside;
  }

  /** What the memory would be if everything entered so far were committed. */
  public Memory working() {
    return working;
  }

  /** What survives if the session ends now without saving. */
  public Memory committed() {
    return committed;
  }

  /** The clocks. */
  public Clocks clocks() {
    return clocks;
  }

  /** Whether there is power. */
  public boolean powered() {
    return powered;
  }

  /** Kind of keypad at which programming was opened, or empty when it is not open. */
  public String keypad() {
    return keypad;
  }

  /** Whether programming is locked. */
  public boolean locked() {
    return locked;
  }

  /** How programming was left last; empty while it is open and before it was ever opened. */
  public Optional<Departure> left() {
    return left;
  }

  /** The same state with other memories and clocks. */
  State withMemories(Memory newWorking, Memory newCommitted, Clocks newClocks) {
    return new State(
        screen,
        typing,
        records,
        location,
        other,
        aside,
        newWorking,
        newCommitted,
        newClocks,
        powered,
        keypad,
        locked,
        left,
        "");
  }

  /** The same state where a transmission is held only by the records that certainly hold it. */
  State withOnlyCertainHolders(String transmission) {
    return new State(
        screen,
        typing,
        records,
        location,
        other,
        aside,
        working,
        committed,
        clocks,
        powered,
        keypad,
        locked,
        left,
        transmission);
  }

  /** Whether the states differ in nothing but memories and clocks. */
  public boolean alikeBesidesMemory(State state) {
    return Arrays.equals(records, state.records) && alikeBesidesMemoryAndRecords(state);
  }

  /**
   * Whether the other state differs in its memories, its clocks, and the current records of other
   * kinds than these at most.
   *
   * @param kinds indices of the kinds of record whose current record counts
   */
  public boolean alikeBesidesMemory(State state, BitSet kinds) {
    for (int kind = kinds.nextSetBit(0); kind >= 0; kind = kinds.nextSetBit(kind + 1)) {
      if (records[kind] != state.records[kind]) {
        return false;
      }
    }
    return alikeBesidesMemoryAndRecords(state);
  }

  private boolean alikeBesidesMemoryAndRecords(State state) {
    return screen.equals(state.screen)
        && typing.equals(state.typing)
        && location == state.location
        && other == state.other
        && aside.equals(state.aside)
        && powered == state.powered
        && keypad.equals(state.keypad)
        && locked == state.locked
        && left.equals(state.left);
  }

  /**
   * The transmission that no record is taken to hold which may hold it without being known to; or
   * empty.
   */
  String onlyCertainHolders() {
    return onlyCertainHolders;
  }

  @Override
  public boolean equals(@Nullable Object object) {
    if (this == object) {
      return true;
    }
    return object instanceof State state
        && hash == state.hash
        && screen.equals(state.screen)
        && typing.equals(state.typing)
        && Arrays.equals(records, state.records)
        && location == state.location
        && other == state.other
        && aside.equals(state.aside)
        && clocks.equals(state.clocks)
        && powered == state.powered
        && keypad.equals(state.keypad)
        && locked == state.locked
        && left.equals(state.left)
        && onlyCertainHolders.equals(state.onlyCertainHolders)
        && working.equals(state.working)
        && committed.equals(state.committed);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
