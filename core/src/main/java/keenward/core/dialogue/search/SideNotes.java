package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.Stored;
import keenward.core.dialogue.order.PassingChange;
import keenward.core.dialogue.order.UnseenOverwrite;

/** What a script changes besides what was planned, and what it overwrites unseen. */
final class SideNotes {
  private final Task task;
  private final Memory end;
  private final Map<Integer, PassingChange> passing = new LinkedHashMap<>();
  private final Map<Integer, UnseenOverwrite> unseen = new LinkedHashMap<>();
  private int number = 1;

  SideNotes(Task task, Memory end) {
    this.task = task;
    this.end = end;
  }

  void look(List<Item> items) {
    for (Item item : items) {
      int own = number++;
      switch (item) {
        case Item.Do deed -> deed.stored().forEach(stored -> note(deed, stored, own));
        case Item.Split split -> split.cases().forEach(one -> look(one.items()));
        case Item.Scroll scroll -> {
          // Noted with the confirming that follows.
        }
        case Item.Switching switching -> {
          // As above.
        }
        case Item.Halt halt -> {
          // Stores nothing.
        }
      }
    }
  }

  private void note(Item.Do deed, Stored stored, int own) {
    Slot slot = stored.slot();
    if (!task.planned(slot) && !stored.before().certainly(stored.after())) {
      passing.putIfAbsent(
          slot.index(), new PassingChange(slot, task.found.get(slot), end.get(slot), own));
    }
    boolean unknown = !task.found.get(slot).known() && !deed.from().working().get(slot).known();
    if (unknown && (stored.sideEffect() || !task.shows(deed.from(), slot))) {
      boolean shown = seen(deed, slot);
      if (!shown) {
        unseen.putIfAbsent(slot.index(), new UnseenOverwrite(slot, stored.after(), own));
      }
    }
  }

  /**
   * Scrolling and switching end on a display that shows the new value; the old one was seen before.
   */
  private static boolean seen(Item.Do deed, Slot slot) {
    return deed.from().typing().touched()
        && !deed.stored().isEmpty()
        && deed.stored().get(0).slot().index() == slot.index();
  }

  List<PassingChange> passing() {
    return new ArrayList<>(passing.values());
  }

  List<UnseenOverwrite> unseen() {
    return new ArrayList<>(unseen.values());
  }
}
