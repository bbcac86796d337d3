package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldType;

/** The shorter way from one place of a list to another. */
final class Cursor {
  private Cursor() {}

  /** Keys that lead from {@code from} to {@code to}, if any do. */
  static Optional<List<String>> way(
      int from,
      int to,
      int size,
      boolean wraps,
      String next,
      String previous,
      Predicate<String> usable) {
    if (from == to) {
      return Optional.of(List.of());
    }
    int onward = to > from ? to - from : wraps ? to - from + size : -1;
    int back = from > to ? from - to : wraps ? from - to + size : -1;
    boolean mayGoOn = onward >= 0 && usable.test(next);
    boolean mayGoBack = back >= 0 && usable.test(previous);
    if (mayGoOn && (!mayGoBack || onward <= back)) {
      return Optional.of(Collections.nCopies(onward, next));
    }
    return mayGoBack ? Optional.of(Collections.nCopies(back, previous)) : Optional.empty();
  }

  /**
   * Keys that move to each word and add it, from the first word of the list; for none, keys that
   * add one and take it back.
   */
  static Optional<List<String>> words(
      Entry.WordByScroll entry,
      FieldType.WordSequence list,
      List<String> words,
      Predicate<String> usable) {
    if (!usable.test(entry.add()) || (words.isEmpty() && !usable.test(entry.erase()))) {
      return Optional.empty();
    }
    if (words.isEmpty()) {
      return Optional.of(List.of(entry.add(), entry.erase()));
    }
    List<String> keys = new ArrayList<>();
    int size = list.words().size();
    int cursor = 0;
    for (String word : words) {
      int place = list.words().indexOf(word);
      Optional<List<String>> way =
          place < 0
              ? Optional.empty()
              : way(cursor, place, size, entry.wraps(), entry.next(), entry.previous(), usable);
      if (way.isEmpty()) {
        return Optional.empty();
      }
      keys.addAll(way.get());
      keys.add(entry.add());
      cursor = place;
    }
    return Optional.of(keys);
  }
}
