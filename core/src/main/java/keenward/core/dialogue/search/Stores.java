package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import keenward.core.dialogue.machine.Stored;

/** What items store, in any of their cases. */
final class Stores {
  private Stores() {}

  static List<Stored> of(List<Item> items) {
    List<Stored> stored = new ArrayList<>();
    for (Item item : items) {
      switch (item) {
        case Item.Do deed -> stored.addAll(deed.stored());
        case Item.Split split -> {
          for (Item.Case one : split.cases()) {
            stored.addAll(of(one.items()));
          }
        }
        case Item.Scroll scroll -> {
          // Stored by the confirming that follows.
        }
        case Item.Switching switching -> {
          // As above.
        }
        case Item.Halt halt -> {
          // Stores nothing.
        }
      }
    }
    return stored;
  }
}
