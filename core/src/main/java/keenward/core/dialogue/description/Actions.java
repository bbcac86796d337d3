package keenward.core.dialogue.description;

import java.util.function.Consumer;

/** Visits the actions of a screen. */
public final class Actions {
  private Actions() {}

  /** Hands every action that can start on {@code screen} to {@code visitor}. */
  public static void forEach(Screen screen, Consumer<Action> visitor) {
    screen.keys().values().forEach(visitor);
    screen.after().ifPresent(timed -> visitor.accept(timed.action()));
    screen.decide().ifPresent(visitor);
    screen.entry().ifPresent(entry -> forEach(entry, visitor));
  }

  private static void forEach(Entry entry, Consumer<Action> visitor) {
    switch (entry) {
      case Entry.Typed typed -> {
        forEach(typed.target(), visitor);
        visitor.accept(typed.then());
        typed.empty().ifPresent(visitor);
        typed.wrong().ifPresent(visitor);
      }
      case Entry.Coded coded -> {
        visitor.accept(coded.then());
        coded.empty().ifPresent(visitor);
        coded.wrong().ifPresent(visitor);
      }
      case Entry.Scroll scroll -> visitor.accept(scroll.then());
      case Entry.Menu menu -> {
        for (Entry.Item item : menu.items()) {
          visitor.accept(item.action());
        }
      }
      case Entry.ToggleByCode toggle -> visitor.accept(toggle.then());
      case Entry.ToggleByCursor toggle -> visitor.accept(toggle.then());
      case Entry.Lettered lettered -> {
        visitor.accept(lettered.then());
        lettered.empty().ifPresent(visitor);
      }
      case Entry.WordByNumber words -> {
        visitor.accept(words.then());
        words.empty().ifPresent(visitor);
      }
      case Entry.WordByScroll words -> {
        visitor.accept(words.then());
        words.empty().ifPresent(visitor);
      }
      case Entry.Hear hear -> {
        visitor.accept(hear.then());
        hear.known().ifPresent(visitor);
        visitor.accept(hear.expired());
      }
    }
  }

  private static void forEach(Target target, Consumer<Action> visitor) {
    if (target instanceof Target.ToItem items) {
      items.items().values().forEach(visitor);
    }
  }
}
