package keenward.core.dialogue.replay;

import java.util.BitSet;
import java.util.Optional;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.State;

/**
 * What the panel may be like at some point of the replay, for some of what its memory may have
 * held.
 *
 * @param state the state
 * @param changed indices of slots that were stored with another value than before
 * @param seen indices of slots of unknown value that a display has shown
 */
record World(State state, BitSet changed, BitSet seen) {
  World {
    changed = copy(changed);
    seen = copy(seen);
  }

  static World of(State state) {
    return new World(state, new BitSet(), new BitSet());
  }

  World with(State newState) {
    return new World(newState, changed, seen);
  }

  /** One world that stands for both, where they differ in memory only. */
  Optional<World> join(World other, Interpreter interpreter) {
    Optional<State> both = interpreter.join(state, other.state);
    if (both.isEmpty()) {
      return Optional.empty();
    }
    BitSet allChanged = copy(changed);
    allChanged.or(other.changed);
    BitSet bothSeen = copy(seen);
    bothSeen.and(other.seen);
    return Optional.of(new World(both.get(), allChanged, bothSeen));
  }

  private static BitSet copy(BitSet bits) {
    BitSet copy = new BitSet();
    copy.or(bits);
    return copy;
  }
}
