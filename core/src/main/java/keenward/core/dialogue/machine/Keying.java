package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Value;
import org.jspecify.annotations.Nullable;

/** What a key does on a screen: a meaning of its own, or a part of what the screen takes in. */
final class Keying {
  private final Turn turn;
  private final KeyMeanings meanings;

  private Keying(Turn turn) {
    this.turn = turn;
    this.meanings = turn.rules.description.keyMeanings();
  }

  static void press(Turn turn, String key) {
    new Keying(turn).press(key);
  }

  private void press(String key) {
    Action own = turn.screen.keys().get(key);
    if (own != null) {
      turn.follow(own);
      return;
    }
    if (turn.screen.entry().isEmpty()) {
      throw Interrupted.refused(Refusal.NO_MEANING);
    }
    switch (turn.screen.entry().get()) {
      case Entry.Typed typed -> typed(typed, key);
      case Entry.Coded coded -> coded(coded, key);
      case Entry.Scroll scroll -> scroll(scroll, key);
      case Entry.Menu menu -> menu(menu, key);
      case Entry.ToggleByCode toggle -> toggleByCode(toggle, key);
      case Entry.ToggleByCursor toggle -> toggleByCursor(toggle, key);
      case Entry.Lettered lettered -> lettered(lettered, key);
      case Entry.WordByNumber words -> wordByNumber(words, key);
      case Entry.WordByScroll words -> wordByScroll(words, key);
      case Entry.Hear hear -> throw Interrupted.refused(Refusal.NO_MEANING);
    }
  }

  // Digits and codes

  private void typed(Entry.Typed entry, String key) {
    Typing typing = turn.typing;
    if (key.equals(entry.confirm())) {
      confirm(
          entry.target(), typing.text(), entry.least(), entry.then(), entry.empty(), entry.wrong());
    } else if (key.equals(entry.erase())) {
      turn.typing = typing.withText(withoutLast(typing.text())).withPending("", 0);
    } else if (!typing.pending().isEmpty()) {
      Map<String, String> shifted = meanings.shifted().getOrDefault(typing.pending(), Map.of());
      turn.typing = typing.withPending("", 0);
      type(entry, shifted.get(key));
    } else if (entry.hexadecimal() && meanings.shifted().containsKey(key)) {
      turn.typing = typing.withPending(key, 0);
    } else {
      type(entry, meanings.direct().get(key));
    }
  }

  private void type(Entry.Typed entry, @Nullable String character) {
    if (character == null || !TypedForm.isDigit(character.charAt(0), entry.hexadecimal())) {
      // A shift key is spent even when no character follows from it.
      turn.note(Refusal.NO_MEANING);
      return;
    }
    if (turn.typing.text().length() >= entry.most()) {
      throw Interrupted.refused(Refusal.FULL);
    }
    turn.typing = turn.typing.withText(turn.typing.text() + character);
    if (entry.advances() && turn.typing.text().length() == entry.most()) {
      confirm(
          entry.target(),
          turn.typing.text(),
          entry.least(),
          entry.then(),
          entry.empty(),
          entry.wrong());
    }
  }

  private void coded(Entry.Coded entry, String key) {
    if (key.startsWith(Rules.CODE)) {
      turn.typing = turn.typing.withText(key);
      if (entry.confirm().isEmpty()) {
        confirm(entry.target(), key, 1, entry.then(), entry.empty(), entry.wrong());
      }
    } else if (key.equals(entry.confirm())) {
      confirm(entry.target(), turn.typing.text(), 1, entry.then(), entry.empty(), entry.wrong());
    } else {
      throw Interrupted.refused(Refusal.NO_MEANING);
    }
  }

  private void confirm(
      Target target,
      String text,
      int least,
      Action then,
      Optional<Action> empty,
      Optional<Action> wrong) {
    if (text.isEmpty()) {
      confirmEmpty(empty);
      return;
    }
    Optional<Refusal> refusal =
        text.length() < least ? Optional.of(Refusal.TOO_SHORT) : take(target, text);
    if (refusal.isEmpty()) {
      turn.follow(target instanceof Target.ToItem items ? item(items, text) : then);
      return;
    }
    turn.note(refusal.get());
    turn.typing = Typing.EMPTY;
    if (wrong.isPresent()) {
      turn.follow(wrong.get());
    }
  }

  private void confirmEmpty(Optional<Action> empty) {
    if (empty.isEmpty()) {
      throw Interrupted.refused(Refusal.NOTHING_TYPED);
    }
    turn.follow(empty.get());
  }

  private static Action item(Target.ToItem items, String text) {
    Action action = items.items().get(text);
    if (action == null) {
      throw Interrupted.refused(Refusal.NO_SUCH_NUMBER);
    }
    return action;
  }

  private Optional<Refusal> take(Target target, String text) {
    return switch (target) {
      case Target.ToField to -> takeInto(turn.slot(to.field()), text);
      case Target.ToRecord to -> {
        int number = TypedForm.number(text);
        if (!turn.rules.kindAt(turn.rules.kind(to.record())).contains(number)) {
          yield Optional.of(Refusal.NO_SUCH_NUMBER);
        }
        turn.chooseRecord(to.record(), number);
        yield Optional.empty();
      }
      case Target.ToLocation to ->
          turn.chooseLocation(TypedForm.number(text))
              ? Optional.empty()
              : Optional.of(Refusal.NO_SUCH_NUMBER);
      case Target.Aside to -> {
        turn.aside = text;
        yield Optional.empty();
      }
      case Target.Repeat to -> {
        boolean same = text.equals(turn.aside);
        turn.aside = "";
        yield same ? takeInto(turn.slot(to.field()), text) : Optional.of(Refusal.NOT_EQUAL);
      }
      case Target.Check to -> {
        Slot slot = turn.slot(to.field());
        Optional<Value> value = meaning(slot, text);
        yield value.isPresent() && turn.holds(slot, value.get())
            ? Optional.empty()
            : Optional.of(Refusal.NOT_EQUAL);
      }
      case Target.ToItem to ->
          to.items().containsKey(text) ? Optional.empty() : Optional.of(Refusal.NO_SUCH_NUMBER);
    };
  }

  private Optional<Refusal> takeInto(Slot slot, String text) {
    Optional<Value> value = meaning(slot, text);
    if (value.isEmpty()) {
      return Optional.of(Refusal.OUT_OF_RANGE);
    }
    turn.store(slot, value.get(), false);
    return Optional.empty();
  }

  private static Optional<Value> meaning(Slot slot, String text) {
    FieldType type = slot.field().type();
    if (text.startsWith(Rules.CODE)) {
      return type instanceof FieldType.Code
          ? Optional.of(new Value.Secret(text.substring(Rules.CODE.length())))
          : Optional.empty();
    }
    return TypedForm.read(type, text);
  }

  // Scrolling

  private void scroll(Entry.Scroll entry, String key) {
    Slot slot = turn.slot(entry.field());
    if (key.equals(entry.confirm())) {
      if (turn.typing.touched()) {
        turn.store(slot, Scrolled.at(slot.field().type(), turn.typing.position()), false);
      }
      turn.follow(entry.then());
      return;
    }
    int size = Scrolled.size(slot.field().type());
    int from =
        turn.typing.touched()
            ? turn.typing.position()
            : Scrolled.position(slot.field().type(), turn.known(slot));
    turn.typing =
        turn.typing.touchedAt(
            moved(key, entry.next(), entry.previous(), entry.wraps(), from, size));
  }

  private static int moved(
      String key, String next, String previous, boolean wraps, int from, int size) {
    if (!key.equals(next) && !key.equals(previous)) {
      throw Interrupted.refused(Refusal.NO_MEANING);
    }
    if (from < 0) {
      return key.equals(next) ? 0 : size - 1;
    }
    int to = from + (key.equals(next) ? 1 : -1);
    if (to >= 0 && to < size) {
      return to;
    }
    if (!wraps) {
      throw Interrupted.refused(Refusal.AT_THE_END);
    }
    return to < 0 ? size - 1 : 0;
  }

  private void menu(Entry.Menu entry, String key) {
    int position = Math.max(0, turn.typing.position());
    if (key.equals(entry.confirm())) {
      turn.follow(entry.items().get(position).action());
      return;
    }
    turn.typing =
        turn.typing.withPosition(
            moved(
                key,
                entry.next(),
                entry.previous(),
                entry.wraps(),
                position,
                entry.items().size()));
  }

  // Options

  private void toggleByCode(Entry.ToggleByCode entry, String key) {
    Slot slot = turn.slot(entry.field());
    if (key.equals(entry.confirm())) {
      storeBits(slot);
      turn.follow(entry.then());
      return;
    }
    if (!(slot.field().type() instanceof FieldType.OptionSet set)) {
      throw Interrupted.refused(Refusal.NO_MEANING);
    }
    String code = meanings.direct().get(key);
    int index = code == null ? -1 : TypedForm.indexOfCode(set.options(), code);
    if (index < 0) {
      throw Interrupted.refused(Refusal.NO_MEANING);
    }
    long bits = bits(slot) ^ (1L << index);
    if (entry.atOnce()) {
      turn.store(slot, new Value.Members(bits), false);
    } else {
      turn.typing = turn.typing.withBits(bits);
    }
  }

  private void toggleByCursor(Entry.ToggleByCursor entry, String key) {
    Slot slot = turn.slot(entry.field());
    if (key.equals(entry.confirm())) {
      storeBits(slot);
      turn.follow(entry.then());
      return;
    }
    if (!(slot.field().type() instanceof FieldType.OptionSet set)) {
      throw Interrupted.refused(Refusal.NO_MEANING);
    }
    int position = Math.max(0, turn.typing.position());
    if (key.equals(entry.toggle())) {
      turn.typing = turn.typing.withBits(bits(slot) ^ (1L << position));
    } else {
      turn.typing =
          turn.typing.withPosition(
              moved(
                  key,
                  entry.next(),
                  entry.previous(),
                  entry.wraps(),
                  position,
                  set.options().size()));
    }
  }

  private long bits(Slot slot) {
    if (turn.typing.touched()) {
      return turn.typing.bits();
    }
    return turn.known(slot) instanceof Value.Members members ? members.bits() : 0;
  }

  private void storeBits(Slot slot) {
    if (turn.typing.touched()) {
      turn.store(slot, new Value.Members(turn.typing.bits()), false);
    }
  }

  // Text

  private void lettered(Entry.Lettered entry, String key) {
    Slot slot = turn.slot(entry.field());
    Typing typing = turn.typing;
    if (key.equals(entry.confirm())) {
      if (!typing.touched()) {
        confirmEmpty(entry.empty());
        return;
      }
      turn.store(slot, new Value.Text(typing.text()), false);
      turn.follow(entry.then());
    } else if (key.equals(entry.clear())) {
      turn.typing = typing.withText("").withPending("", 0);
    } else if (key.equals(entry.advance())) {
      if (typing.pending().isEmpty()) {
        throw Interrupted.refused(Refusal.NOT_NOW);
      }
      turn.typing = typing.withPending("", 0);
    } else if (key.equals(entry.erase())) {
      turn.typing = typing.withText(withoutLast(text(entry, slot))).withPending("", 0);
    } else {
      letter(entry, slot, key);
    }
  }

  private void letter(Entry.Lettered entry, Slot slot, String key) {
    String letters = meanings.letters().get(key);
    if (letters == null || !(slot.field().type() instanceof FieldType.FreeText type)) {
      throw Interrupted.refused(Refusal.NO_MEANING);
    }
    String text = text(entry, slot);
    if (turn.typing.pending().equals(key)) {
      int taps = (turn.typing.count() + 1) % letters.length();
      turn.typing =
          turn.typing.withText(withoutLast(text) + letters.charAt(taps)).withPending(key, taps);
      return;
    }
    if (text.length() >= type.length()) {
      throw Interrupted.refused(Refusal.FULL);
    }
    turn.typing = turn.typing.withText(text + letters.charAt(0)).withPending(key, 0);
  }

  private String text(Entry.Lettered entry, Slot slot) {
    if (turn.typing.touched() || !entry.fromCurrent()) {
      return turn.typing.text();
    }
    return turn.known(slot) instanceof Value.Text text ? text.text() : "";
  }

  private static String withoutLast(String text) {
    if (text.isEmpty()) {
      throw Interrupted.refused(Refusal.NOTHING_TYPED);
    }
    return text.substring(0, text.length() - 1);
  }

  // Words of the panel's list

  private void wordByNumber(Entry.WordByNumber entry, String key) {
    Slot slot = turn.slot(entry.field());
    Typing typing = turn.typing;
    if (key.equals(entry.confirm())) {
      if (!typing.text().isEmpty()) {
        throw Interrupted.refused(Refusal.TOO_SHORT);
      }
      confirmWords(slot, entry.then(), entry.empty());
    } else if (key.equals(entry.erase())) {
      if (typing.text().isEmpty()) {
        turn.typing = typing.withWords(withoutLast(typing.words()));
      } else {
        turn.typing = typing.withText(withoutLast(typing.text()));
      }
    } else {
      String digit = meanings.direct().get(key);
      if (digit == null || !TypedForm.isDigit(digit.charAt(0), false)) {
        throw Interrupted.refused(Refusal.NO_MEANING);
      }
      wordDigit(entry, slot, typing.text() + digit);
    }
  }

  private void wordDigit(Entry.WordByNumber entry, Slot slot, String text) {
    FieldType.WordSequence type = words(slot);
    if (turn.typing.words().size() >= type.most()) {
      throw Interrupted.refused(Refusal.FULL);
    }
    if (text.length() < entry.digits()) {
      turn.typing = turn.typing.withText(text);
      return;
    }
    int number = TypedForm.number(text);
    if (number < 1 || number > type.words().size()) {
      turn.typing = turn.typing.withText("");
      turn.note(Refusal.NO_SUCH_NUMBER);
      return;
    }
    turn.typing = turn.typing.withText("").withWords(plus(type.words().get(number - 1)));
  }

  private void wordByScroll(Entry.WordByScroll entry, String key) {
    Slot slot = turn.slot(entry.field());
    Typing typing = turn.typing;
    FieldType.WordSequence type = words(slot);
    int position = Math.max(0, typing.position());
    if (key.equals(entry.confirm())) {
      confirmWords(slot, entry.then(), entry.empty());
    } else if (key.equals(entry.erase())) {
      turn.typing = typing.withWords(withoutLast(typing.words()));
    } else if (key.equals(entry.add())) {
      if (typing.words().size() >= type.most()) {
        throw Interrupted.refused(Refusal.FULL);
      }
      turn.typing = typing.withWords(plus(type.words().get(position)));
    } else {
      turn.typing =
          typing.withPosition(
              moved(
                  key,
                  entry.next(),
                  entry.previous(),
                  entry.wraps(),
                  position,
                  type.words().size()));
    }
  }

  private void confirmWords(Slot slot, Action then, Optional<Action> empty) {
    if (!turn.typing.touched()) {
      confirmEmpty(empty);
      return;
    }
    turn.store(slot, new Value.Words(turn.typing.words()), false);
    turn.follow(then);
  }

  private static FieldType.WordSequence words(Slot slot) {
    if (slot.field().type() instanceof FieldType.WordSequence words) {
      return words;
    }
    throw Interrupted.refused(Refusal.NO_MEANING);
  }

  private List<String> plus(String word) {
    List<String> words = new ArrayList<>(turn.typing.words());
    words.add(word);
    return words;
  }

  private static List<String> withoutLast(List<String> words) {
    if (words.isEmpty()) {
      throw Interrupted.refused(Refusal.NOTHING_TYPED);
    }
    return words.subList(0, words.size() - 1);
  }

  /** Stores what is being entered, as confirming would, where it is valid; leads nowhere. */
  static void storeTyped(Turn turn) {
    if (!turn.typing.touched() || turn.screen.entry().isEmpty()) {
      return;
    }
    Typing typing = turn.typing;
    switch (turn.screen.entry().get()) {
      case Entry.Typed typed
          when typed.target() instanceof Target.ToField to
              && typing.text().length() >= typed.least() -> {
        Slot slot = turn.slot(to.field());
        Optional<Value> value = meaning(slot, typing.text());
        if (value.isPresent()) {
          turn.store(slot, value.get(), false);
        }
      }
      case Entry.Coded coded when coded.target() instanceof Target.ToField to -> {
        Slot slot = turn.slot(to.field());
        Optional<Value> value = meaning(slot, typing.text());
        if (value.isPresent()) {
          turn.store(slot, value.get(), false);
        }
      }
      case Entry.Scroll scroll -> {
        Slot slot = turn.slot(scroll.field());
        turn.store(slot, Scrolled.at(slot.field().type(), typing.position()), false);
      }
      case Entry.ToggleByCode toggle ->
          turn.store(turn.slot(toggle.field()), new Value.Members(typing.bits()), false);
      case Entry.ToggleByCursor toggle ->
          turn.store(turn.slot(toggle.field()), new Value.Members(typing.bits()), false);
      case Entry.Lettered lettered ->
          turn.store(turn.slot(lettered.field()), new Value.Text(typing.text()), false);
      case Entry.WordByNumber words ->
          turn.store(turn.slot(words.field()), new Value.Words(typing.words()), false);
      case Entry.WordByScroll words ->
          turn.store(turn.slot(words.field()), new Value.Words(typing.words()), false);
      default -> {
        // Menus, record numbers and transmitters hold nothing that a drop-out could store.
      }
    }
  }
}
