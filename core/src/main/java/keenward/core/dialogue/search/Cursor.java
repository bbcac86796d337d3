package keenward.core.dialogue.search;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

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
}
