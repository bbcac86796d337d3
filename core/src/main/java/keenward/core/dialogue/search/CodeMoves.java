package keenward.core.dialogue.search;

import java.util.Optional;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;

/** Moves on a screen that takes a whole code. */
final class CodeMoves {
  private final Moves moves;

  CodeMoves(Moves moves) {
    this.moves = moves;
  }

  void find(Entry.Coded entry) {
    if (moves.reaches(entry.confirm())) {
      moves.add(from -> moves.start(from).press(entry.confirm()));
    }
    switch (entry.target()) {
      case Target.ToField to ->
          slot(to.field())
              .ifPresent(slot -> {
                for (Value value : moves.useful(slot)) {
                  enter(entry, value);
                }
              });
      case Target.Aside to -> {
        for (FieldReference field : moves.task.facts.repeated()) {
          slot(field)
              .ifPresent(slot -> {
                for (Value value : moves.useful(slot)) {
                  enter(entry, value);
                }
              });
        }
      }
      case Target.Repeat to -> {
        if (moves.state.aside().startsWith(Run.CODE)) {
          press(entry, moves.state.aside());
        }
      }
      case Target.Check to ->
          slot(to.field()).ifPresent(slot -> enter(entry, moves.state.working().get(slot)));
      default -> {
        // A code is no number of anything.
      }
    }
  }

  private Optional<Slot> slot(FieldReference field) {
    return moves.interpreter().slot(moves.state, field);
  }

  private void enter(Entry.Coded entry, Value value) {
    if (value instanceof Value.Secret secret) {
      press(entry, Run.CODE + secret.reference());
    }
  }

  private void press(Entry.Coded entry, String code) {
    if (entry.confirm().isEmpty()) {
      moves.add(from -> moves.start(from).press(code));
    } else {
      moves.addFinished(from -> moves.start(from).press(code), entry.confirm());
    }
  }
}
