package keenward.core.dialogue.description;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A place in the dialogue.
 *
 * @param name name in the description
 * @param programming whether programming is open here
 * @param lines what a text keypad shows
 * @param elsewhere what keypads of other kinds show, by their name; a kind that is missing shows
 *     nothing (blind)
 * @param entry what it takes in, if anything
 * @param keys keys with a meaning of their own
 * @param after what happens by itself when no key comes, if anything
 * @param decide where set, the screen is never seen: on arrival it leads on at once
 */
public record Screen(
    String name,
    boolean programming,
    List<Template> lines,
    Map<String, List<Template>> elsewhere,
    Optional<Entry> entry,
    Map<String, Action> keys,
    Optional<Timed> after,
    Optional<Action> decide) {
  public Screen {
    lines = List.copyOf(lines);
    elsewhere = Ordered.copyOf(elsewhere);
    keys = Ordered.copyOf(keys);
  }

  /** An action that comes by itself when no key was pressed for {@code tenths}. */
  public record Timed(int tenths, Action action) {}
}
