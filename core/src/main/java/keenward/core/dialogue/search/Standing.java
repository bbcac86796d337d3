package keenward.core.dialogue.search;

import java.util.BitSet;
import keenward.core.dialogue.machine.Clocks;
import keenward.core.dialogue.machine.State;
import org.jspecify.annotations.Nullable;

/**
 * A state as far as it matters between two moves. Clocks that the next key sets back are left out,
 * and so are the time since power-up while programming is open, and current records that another
 * choice comes before: of two states that differ in those only, the one reached at less cost is
 * kept.
 */
final class Standing {
  private final State state;
  private final boolean open;
  private final BitSet records;
  private final int hash;

  Standing(Task task, State state) {
    this.state = state;
    this.open = task.interpreter.programmingOpen(state);
    int mixed = state.screen().hashCode();
    mixed = mixed * 31 + state.working().hashCode();
    mixed = mixed * 31 + state.committed().hashCode();
    mixed = mixed * 31 + state.location();
    mixed = mixed * 31 + state.aside().hashCode();
    this.records = task.liveRecords(state.screen());
    for (int kind = records.nextSetBit(0); kind >= 0; kind = records.nextSetBit(kind + 1)) {
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
        && state.alikeBesidesMemory(other.state, records)
        && state.working().equals(other.state.working())
        && state.committed().equals(other.state.committed());
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
