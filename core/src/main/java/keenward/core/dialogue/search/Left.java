package keenward.core.dialogue.search;

import keenward.core.dialogue.machine.State;

/** Whether programming was left as it should be. */
final class Left {
  private Left() {}

  /** Programming is closed, was last left safely, and nothing is locked or waiting to be saved. */
  static boolean safely(Task task, State state) {
    return !task.interpreter.programmingOpen(state)
        && state.left().filter(left -> left.safe() && !left.locked()).isPresent()
        && !state.locked()
        && state.working().equals(state.committed());
  }
}
