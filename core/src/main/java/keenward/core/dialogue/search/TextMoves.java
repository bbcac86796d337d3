package keenward.core.dialogue.search;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;

/** Moves on a screen where text is tapped letter by letter. */
final class TextMoves {
  private final Moves moves;

  TextMoves(Moves moves) {
    this.moves = moves;
  }

  void find(Entry.Lettered entry) {
    if (moves.reaches(entry.confirm())) {
      moves.add(from -> moves.start(from).press(entry.confirm()));
    }
    Optional<Slot> slot = moves.interpreter().slot(moves.state, entry.field());
    if (slot.isEmpty()) {
      return;
    }
    for (Value value : moves.useful(slot.get())) {
      if (value instanceof Value.Text text) {
        enter(entry, slot.get(), value, text.text());
      }
    }
  }

  private void enter(Entry.Lettered entry, Slot slot, Value value, String text) {
    Optional<Completion.Deed> typing = shortest(entry, slot, text);
    if (typing.isEmpty()) {
      moves.task.notice(slot, Reasons.notOnThisKeypad(moves.task, slot));
      return;
    }
    if (moves.reaches(entry.confirm())) {
      moves.addTypingOver(slot, value, from -> typing.get().from(from).press(entry.confirm()));
    }
    moves.addLeaving(typing.get());
  }

  /** The shortest way to have {@code text} entered, if there is one. */
  private Optional<Completion.Deed> shortest(Entry.Lettered entry, Slot slot, String text) {
    Optional<Completion.Deed> best = Optional.empty();
    long bestCost = Cost.NEVER;
    String held = heldText(entry, slot);
    boolean known = !entry.fromCurrent() || moves.state.working().get(slot).known();
    for (int kept = 0; kept <= common(held, text); kept++) {
      for (boolean clearing : new boolean[] {false, true}) {
        if (clearing ? kept > 0 : !known) {
          continue;
        }
        Optional<Completion.Deed> deed = deed(entry, text, kept, held.length() - kept, clearing);
        if (deed.isPresent()) {
          Run run = deed.get().from(sample(slot));
          if (run.alive() && !run.acts().isEmpty() && run.cost() < bestCost) {
            best = deed;
            bestCost = run.cost();
          }
        }
      }
    }
    if (entry.fromCurrent() && text.equals(held)) {
      for (String key : moves.task.description.keyMeanings().letters().keySet()) {
        Completion.Deed touching = from -> moves.start(from).press(key).press(entry.erase());
        Run run = touching.from(sample(slot));
        if (run.alive() && run.state().typing().text().equals(text) && run.cost() < bestCost) {
          best = Optional.of(touching);
          bestCost = run.cost();
        }
      }
    }
    return best;
  }

  /** A state in which the interpreter can follow typing: what clearing does is the same for all. */
  private State sample(Slot slot) {
    State state = moves.state;
    return state.working().get(slot).known()
        ? state
        : moves.interpreter().assume(state, slot, new Value.Text(""));
  }

  private String heldText(Entry.Lettered entry, Slot slot) {
    return entry.fromCurrent() && moves.state.working().get(slot) instanceof Value.Text text
        ? text.text()
        : "";
  }

  static int common(String first, String second) {
    int length = 0;
    while (length < first.length()
        && length < second.length()
        && first.charAt(length) == second.charAt(length)) {
      length++;
    }
    return length;
  }

  /** Erases what is too much, or clears, and types the rest. */
  private Optional<Completion.Deed> deed(
      Entry.Lettered entry, String text, int kept, int erasing, boolean clearing) {
    boolean erases = erasing > 0 && !clearing;
    if ((clearing && !moves.reaches(entry.clear())) || (erases && !moves.reaches(entry.erase()))) {
      return Optional.empty();
    }
    Predicate<String> free =
        key ->
            moves.reaches(key)
                && !key.equals(entry.confirm())
                && !key.equals(entry.erase())
                && !key.equals(entry.clear())
                && !key.equals(entry.advance());
    Optional<List<Typist.Tapped>> letters =
        moves.task.typist.letters(text.substring(kept), "", free);
    if (letters.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(from -> {
      Run run = moves.start(from);
      if (clearing) {
        run.press(entry.clear());
      } else {
        run.press(entry.erase(), erasing);
      }
      for (Typist.Tapped tapped : letters.get()) {
        tap(run, entry, tapped);
      }
      return run;
    });
  }

  private void tap(Run run, Entry.Lettered entry, Typist.Tapped tapped) {
    if (run.state().typing().pending().equals(tapped.key())) {
      if (moves.reaches(entry.advance())) {
        run.press(entry.advance());
      } else {
        int pause = moves.task.description.keyMeanings().tapPauseTenths();
        run.pause(Math.max(0, pause - run.state().clocks().idle()));
      }
    }
    run.press(tapped.key(), tapped.taps());
  }
}
