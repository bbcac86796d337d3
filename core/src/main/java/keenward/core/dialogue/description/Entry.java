package keenward.core.dialogue.description;

import java.util.List;
import java.util.Optional;

/**
 * How a screen takes something in. An empty key name means that there is no such key. Where {@code
 * empty} is absent, confirming nothing is refused; where {@code wrong} is absent, a wrong value is
 * refused and what was typed is cleared.
 */
public sealed interface Entry {

  /** The fields that it stores into. */
  default List<FieldReference> stores() {
    return switch (this) {
      case Typed typed -> typed.target().stores();
      case Coded coded -> coded.target().stores();
      case Scroll scroll -> List.of(scroll.field());
      case Menu menu -> List.of();
      case ToggleByCode toggle -> List.of(toggle.field());
      case ToggleByCursor toggle -> List.of(toggle.field());
      case Lettered lettered -> List.of(lettered.field());
      case WordByNumber words -> List.of(words.field());
      case WordByScroll words -> List.of(words.field());
      case Hear hear ->
          hear.part().isPresent()
              ? List.of(hear.serial(), hear.part().get())
              : List.of(hear.serial());
    };
  }

  /**
   * Digits, or hexadecimal digits by shift keys.
   *
   * @param least fewest digits
   * @param most most digits
   * @param hexadecimal whether shift keys work here
   * @param advances whether the last digit confirms by itself
   * @param confirm key that confirms
   * @param erase key that takes back the last digit
   * @param then after the value was taken
   * @param empty confirmed with nothing typed (skip unchanged)
   * @param wrong the value was refused
   */
  record Typed(
      Target target,
      int least,
      int most,
      boolean hexadecimal,
      boolean advances,
      String confirm,
      String erase,
      Action then,
      Optional<Action> empty,
      Optional<Action> wrong)
      implements Entry {}

  /**
   * A whole code, typed as one opaque key {@code code:REFERENCE}. Without a confirm key it counts
   * at once.
   */
  record Coded(
      Target target, String confirm, Action then, Optional<Action> empty, Optional<Action> wrong)
      implements Entry {}

  /**
   * A choice or a number changed by scrolling from what it holds; confirming unscrolled stores
   * nothing.
   */
  record Scroll(
      FieldReference field,
      String next,
      String previous,
      boolean wraps,
      String confirm,
      Action then)
      implements Entry {}

  /** A menu whose items are scrolled to and confirmed; it starts at the first. */
  record Menu(List<Item> items, String next, String previous, boolean wraps, String confirm)
      implements Entry {
    public Menu {
      items = List.copyOf(items);
    }
  }

  /** An item of a menu. */
  record Item(String shown, Action action) {}

  /** Options of a set switched by the key of their code, starting from what the field holds. */
  record ToggleByCode(FieldReference field, boolean atOnce, String confirm, Action then)
      implements Entry {}

  /** Options of a set switched by moving to each and pressing {@code toggle}. */
  record ToggleByCursor(
      FieldReference field,
      String next,
      String previous,
      boolean wraps,
      String toggle,
      String confirm,
      Action then)
      implements Entry {}

  /**
   * Text by multi-tap with the panel's letters.
   *
   * @param fromCurrent whether typing goes on at the end of what the field holds, rather than anew
   * @param advance key that ends the letter being tapped
   * @param erase key that takes back the last letter
   * @param clear key that empties the text
   */
  record Lettered(
      FieldReference field,
      boolean fromCurrent,
      String advance,
      String erase,
      String clear,
      String confirm,
      Action then,
      Optional<Action> empty)
      implements Entry {}

  /** Words by their number of exactly {@code digits} digits; typing starts anew. */
  record WordByNumber(
      FieldReference field,
      int digits,
      String erase,
      String confirm,
      Action then,
      Optional<Action> empty)
      implements Entry {}

  /** Words by scrolling through the list and pressing {@code add}; typing starts anew. */
  record WordByScroll(
      FieldReference field,
      String next,
      String previous,
      boolean wraps,
      String add,
      String erase,
      String confirm,
      Action then,
      Optional<Action> empty)
      implements Entry {}

  /**
   * Waits for a transmitter and learns it. Idle time does not run meanwhile.
   *
   * @param serial field that takes the serial
   * @param part field that takes the input that was heard, a choice with the same words
   * @param waitTenths how long it listens
   * @param times how many times in a row the same transmission must be heard
   * @param then after it was learnt
   * @param known it is held by another record already
   * @param expired nothing was heard in time
   */
  record Hear(
      FieldReference serial,
      Optional<FieldReference> part,
      int waitTenths,
      int times,
      Action then,
      Optional<Action> known,
      Action expired)
      implements Entry {}
}
