package keenward.core.dialogue.search;

import keenward.core.dialogue.machine.Clocks;
import keenward.core.dialogue.machine.State;
import org.jspecify.annotations.Nullable;

/**
 * A state as far as it matters between two moves. Clocks that the next key sets back are left out,
 * and so is the time since power-up while programming is open: of two states that differ in those
 * only, the one reached at less cost is kept.
 */
final class Standing {
  private final State state;
  private final boolean open;
  private final int hash;

  Standing(Task task, State state) {
    this.state = state;
    this.open = task.interpreter.programmingOpen(state);
    int mixed = state.screen().hashCode();
    mixed = mixed * 31 + state.working().hashCode();
    mixed = mixed * 31 + state.committed().hashCode();
    mixed = mixed * 31 + state.location();
    mixed = mixed * 31 + state.aside().hashCode();
    for (int kind = 0; kind < task.description.records().size(); kind++) {
      mixed = mixed * 31 + state.record(kind);
    }
    this.hash = mixed;
  }

  @Override
  public boolean equals(@Nullable Object object) {
    if (!(object instanceof Standing other) || hash != other.hash) {
      return false;
    }
    Clocks one = state.clocks();
    Clocks two = other.state.clocks();
    return one.busy() == two.busy()
        && one.deaf() == two.deaf()
        && one.keypadsRestart() == two.keypadsRestart()
        && (open || one.sincePower() == two.sincePower())
        && state.alikeBesidesMemory(other.state)
        && state.working().equals(other.state.working())
        && state.committed().equals(other.state.committed());
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
