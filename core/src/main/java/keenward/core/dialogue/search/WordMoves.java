package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;

/** Moves on a screen where words of the panel's own list are put together. */
final class WordMoves {
  private final Moves moves;

  WordMoves(Moves moves) {
    this.moves = moves;
  }

  void find(Entry.WordByNumber entry) {
    passOver(entry.confirm());
    slot(entry.field())
        .ifPresent(slot -> {
          for (Value value : moves.useful(slot)) {
            if (value instanceof Value.Words words
                && slot.field().type() instanceof FieldType.WordSequence list) {
              enter(slot, value, numbers(entry, list, words.words()), entry.confirm());
            }
          }
        });
  }

  void find(Entry.WordByScroll entry) {
    passOver(entry.confirm());
    slot(entry.field())
        .ifPresent(slot -> {
          for (Value value : moves.useful(slot)) {
            if (value instanceof Value.Words words
                && slot.field().type() instanceof FieldType.WordSequence list) {
              enter(
                  slot,
                  value,
                  Cursor.words(entry, list, words.words(), moves::reaches),
                  entry.confirm());
            }
          }
        });
  }

  private void passOver(String confirm) {
    if (moves.reaches(confirm)) {
      moves.add(from -> moves.start(from).press(confirm));
    }
  }

  private Optional<Slot> slot(FieldReference field) {
    return moves.interpreter().slot(moves.state, field);
  }

  private void enter(Slot slot, Value value, Optional<List<String>> keys, String confirm) {
    if (keys.isEmpty()) {
      moves.task.notice(slot, Reasons.notOnThisKeypad(moves.task, slot));
      return;
    }
    if (moves.reaches(confirm)) {
      moves.addTypingOver(slot, value, from -> moves.start(from).press(keys.get()).press(confirm));
    }
    moves.addLeaving(from -> moves.start(from).press(keys.get()));
  }

  private Optional<List<String>> numbers(
      Entry.WordByNumber entry, FieldType.WordSequence list, List<String> words) {
    if (words.isEmpty()) {
      return digits(entry, "0").map(keys -> with(keys, entry.erase()));
    }
    List<String> keys = new ArrayList<>();
    for (String word : words) {
      StringBuilder number = new StringBuilder(Integer.toString(list.words().indexOf(word) + 1));
      while (number.length() < entry.digits()) {
        number.insert(0, '0');
      }
      Optional<List<String>> digits = digits(entry, number.toString());
      if (digits.isEmpty() || !list.words().contains(word)) {
        return Optional.empty();
      }
      keys.addAll(digits.get());
    }
    return Optional.of(keys);
  }

  private Optional<List<String>> digits(Entry.WordByNumber entry, String number) {
    return moves.task.typist.digits(
        number,
        false,
        key -> moves.reaches(key) && !key.equals(entry.confirm()) && !key.equals(entry.erase()));
  }

  private static List<String> with(List<String> keys, String last) {
    List<String> longer = new ArrayList<>(keys);
    longer.add(last);
    return longer;
  }
}
