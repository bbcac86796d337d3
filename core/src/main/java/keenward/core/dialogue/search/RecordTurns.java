package keenward.core.dialogue.search;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;

/**
 * How many changes it takes at the least to make another record of a kind the current one, in a
 * dialogue that can only leaf through them. Where a number can be typed, or a branch leafs more
 * than once, one change is all that can be claimed.
 */
final class RecordTurns {
  private final RecordKind kind;
  private final Set<Integer> chosen = new TreeSet<>();
  private final Set<String> deciding = new HashSet<>();
  private boolean onward;
  private boolean back;
  private boolean around;
  private boolean anywhere;
  private final Map<Integer, int[]> least = new HashMap<>();

  RecordTurns(PanelDescription description, String name) {
    this.kind = description.findRecord(name).orElseThrow();
    // Leaving makes the first one the current one.
    chosen.add(kind.first());
    for (Location location : description.locations()) {
      anywhere |= description.findField(location.field()).filter(this::ofTheKind).isPresent();
    }
    for (Screen screen : description.screens().values()) {
      if (screen.decide().isPresent()) {
        deciding.add(screen.name());
      }
    }
    for (Screen screen : description.screens().values()) {
      anywhere |=
          screen.entry().isPresent()
              && screen.entry().get() instanceof Entry.Typed typed
              && typed.target() instanceof Target.ToRecord to
              && to.record().equals(name);
      Actions.forEach(screen, this::look);
    }
    for (Field field : description.fields()) {
      for (Effect effect : field.onChange()) {
        look(effect);
        anywhere |= effect instanceof Effect.MoveRecord;
      }
    }
  }

  private boolean ofTheKind(Field field) {
    return field.record().equals(kind.name());
  }

  private void look(Action action) {
    for (Action.Branch branch : action.branches()) {
      int moves = 0;
      for (Effect effect : branch.effects()) {
        look(effect);
        moves += effect instanceof Effect.MoveRecord ? 1 : 0;
      }
      boolean goesOn =
          branch.destination() instanceof Destination.ToScreen to && deciding.contains(to.screen());
      anywhere |= moves > 1 || (moves == 1 && goesOn);
    }
  }

  private void look(Effect effect) {
    switch (effect) {
      case Effect.MoveRecord move when move.record().equals(kind.name()) -> {
        onward |= move.move() == Effect.Move.NEXT;
        back |= move.move() == Effect.Move.PREVIOUS;
        around |= move.wraps();
      }
      case Effect.ChooseRecord choose when choose.record().equals(kind.name()) ->
          chosen.add(choose.number());
      case Effect.ChooseOther choose when choose.record().equals(kind.name()) -> anywhere = true;
      default -> {
        // Leaves the current record as it is.
      }
    }
  }

  /** At least so many changes from one number to another; 0 where they are the same. */
  int least(int from, int to) {
    if (from == to) {
      return 0;
    }
    if (anywhere) {
      return 1;
    }
    int[] changes = least.computeIfAbsent(from, this::from);
    return changes[to - kind.first()];
  }

  /** Breadth-first over the numbers. */
  private int[] from(int start) {
    int[] changes = new int[kind.size()];
    Arrays.fill(changes, 1);
    boolean[] seen = new boolean[kind.size()];
    Deque<Integer> open = new ArrayDeque<>();
    open.add(start);
    seen[start - kind.first()] = true;
    changes[start - kind.first()] = 0;
    while (!open.isEmpty()) {
      int number = open.remove();
      Set<Integer> next = new TreeSet<>(chosen);
      if (onward) {
        next.add(number < kind.last() ? number + 1 : around ? kind.first() : number);
      }
      if (back) {
        next.add(number > kind.first() ? number - 1 : around ? kind.last() : number);
      }
      for (int reached : next) {
        int place = reached - kind.first();
        if (kind.contains(reached) && !seen[place]) {
          seen[place] = true;
          changes[place] = changes[number - kind.first()] + 1;
          open.add(reached);
        }
      }
    }
    return changes;
  }
}
