package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.TypedForm;

/** Where fields are entered, and what entering a value costs there at the least. */
final class Estimate {
  private final Task task;
  private final ScreenGraph graph;
  private final Map<String, List<Place>> places = new HashMap<>();
  private final Map<String, int[]> screens = new HashMap<>();
  private final Map<Integer, Map<Value, long[]>> entering = new HashMap<>();

  /** A screen on which a field is entered. */
  record Place(int screen, Entry entry) {}

  Estimate(Task task, ScreenGraph graph) {
    this.task = task;
    this.graph = graph;
    for (Screen screen : task.description.screens().values()) {
      screen.entry().ifPresent(entry -> look(screen, entry));
    }
  }

  Task task() {
    return task;
  }

  ScreenGraph graph() {
    return graph;
  }

  /** Screens that enter the field. */
  List<Place> places(Field field) {
    return places.getOrDefault(field.name(), List.of());
  }

  /** Whether the field is entered by hearing a transmitter and in no other way. */
  boolean onlyHeard(Field field) {
    for (Place place : places(field)) {
      if (!(place.entry() instanceof Entry.Hear)) {
        return false;
      }
    }
    return true;
  }

  /** Whether any screen enters the field at all, whatever the keypad. */
  boolean entered(Field field) {
    return places.containsKey(field.name());
  }

  /** Whether the slot's wanted value can be entered somewhere with the keys of this keypad. */
  boolean enterable(Slot slot) {
    if (free(slot)) {
      return true;
    }
    for (long cost : entering(slot, Value.unknown())) {
      if (cost < Cost.NEVER) {
        return true;
      }
    }
    return false;
  }

  private void look(Screen screen, Entry entry) {
    for (FieldReference reference : entry.stores()) {
      for (String field : fields(screen, reference)) {
        places
            .computeIfAbsent(field, name -> new ArrayList<>())
            .add(new Place(graph.index(screen.name()), entry));
      }
    }
  }

  private List<String> fields(Screen screen, FieldReference reference) {
    if (reference instanceof FieldReference.Named named) {
      return List.of(named.field());
    }
    List<String> fields = new ArrayList<>();
    for (Location location : task.description.locations()) {
      if (location.screen().equals(screen.name()) && !fields.contains(location.field())) {
        fields.add(location.field());
      }
    }
    return fields;
  }

  /** Screens where a slot is entered, in a fixed order. */
  int[] screens(Slot slot) {
    return screens.computeIfAbsent(
        slot.field().name(),
        name -> {
          List<Place> all = places.getOrDefault(name, List.of());
          int[] indices = new int[all.size()];
          for (int place = 0; place < indices.length; place++) {
            indices[place] = all.get(place).screen();
          }
          return indices;
        });
  }

  /** At least this much to enter what is wanted on each of {@link #screens}, from what is held. */
  long[] entering(Slot slot, Value held) {
    return entering
        .computeIfAbsent(slot.index(), index -> new HashMap<>())
        .computeIfAbsent(held, value -> reckon(slot, value));
  }

  private long[] reckon(Slot slot, Value held) {
    List<Place> all = places.getOrDefault(slot.field().name(), List.of());
    long[] costs = new long[all.size()];
    Value wanted = task.wanted.get(slot);
    for (int place = 0; place < costs.length; place++) {
      Entry entry = all.get(place).entry();
      costs[place] = entering(entry, slot, wanted, held);
      // Until it is entered, a side effect may change what is held.
      for (Value given : task.facts.given(slot.field())) {
        costs[place] = Math.min(costs[place], entering(entry, slot, wanted, given));
      }
    }
    return costs;
  }

  /** Whether the slot may become right along with another, so that it counts nothing. */
  boolean free(Slot slot) {
    Value wanted = task.wanted.get(slot);
    if (task.facts.given(slot.field()).contains(wanted)) {
      return true;
    }
    for (Place place : places.getOrDefault(slot.field().name(), List.of())) {
      if (place.entry() instanceof Entry.Hear hear
          && hear.part().isPresent()
          && hear.part().get().equals(new FieldReference.Named(slot.field().name()))) {
        return true;
      }
    }
    return false;
  }

  /** Moving to each word and adding it. */
  private long leafing(Entry.WordByScroll entry, Slot slot, Value wanted) {
    if (!(wanted instanceof Value.Words list)
        || !(slot.field().type() instanceof FieldType.WordSequence sequence)) {
      return Cost.NEVER;
    }
    return Cursor.words(entry, sequence, list.words(), graph::has)
        .map(keys -> graph.keys(keys.size()))
        .orElse(Cost.NEVER);
  }

  private long entering(Entry entry, Slot slot, Value wanted, Value held) {
    return switch (entry) {
      case Entry.Typed typed -> typing(typed, slot, wanted);
      case Entry.Coded coded ->
          graph.keys(1) + (coded.confirm().isEmpty() ? 0 : confirming(coded.confirm()));
      case Entry.Scroll scroll ->
          Cost.sum(scrolling(scroll, slot, wanted, held), confirming(scroll.confirm()));
      case Entry.Menu menu -> Cost.NEVER;
      case Entry.ToggleByCode toggle ->
          graph.keys(differing(slot, wanted, held))
              + (toggle.atOnce() ? 0 : confirming(toggle.confirm()));
      case Entry.ToggleByCursor toggle ->
          Cost.sum(
              graph.keys(
                  differing(slot, wanted, held)
                      + (held.known() ? 0 : differing(slot, wanted, held) - 1)),
              confirming(toggle.confirm()));
      case Entry.Lettered lettered ->
          Cost.sum(lettering(lettered, wanted, held), confirming(lettered.confirm()));
      case Entry.WordByNumber words ->
          wanted instanceof Value.Words list
              ? Cost.sum(
                  graph.keys(Math.max(1, list.words().size() * words.digits())),
                  confirming(words.confirm()))
              : Cost.NEVER;
      case Entry.WordByScroll words ->
          Cost.sum(leafing(words, slot, wanted), confirming(words.confirm()));
      case Entry.Hear hear -> Cost.of(Math.max(1, hear.times()), 0);
    };
  }

  private long confirming(String key) {
    if (task.facts.leavingStoresTyped()) {
      return Cost.of(1, 0);
    }
    return graph.has(key) ? Cost.of(1, 0) : Cost.NEVER;
  }

  private long typing(Entry.Typed typed, Slot slot, Value wanted) {
    Optional<String> text = TypedForm.write(slot.field().type(), wanted);
    Optional<List<String>> keys =
        text.flatMap(digits -> task.typist.digits(digits, typed.hexadecimal(), key -> true));
    if (keys.isEmpty()) {
      return Cost.NEVER;
    }
    long digits = graph.keys(Math.max(keys.get().size(), typed.least()));
    return typed.advances() ? digits : Cost.sum(digits, confirming(typed.confirm()));
  }

  private long scrolling(Entry.Scroll scroll, Slot slot, Value wanted, Value held) {
    List<Value> values = task.interpreter.completions(slot, ScrollMoves.MOST_VALUES);
    int to = values.indexOf(wanted);
    if (to < 0) {
      return Cost.NEVER;
    }
    if (held.known()) {
      return scrolling(scroll, values, held, to);
    }
    // Whoever reads it first has the longest way to reckon with.
    long longest = 0;
    for (Value value : task.mayHold(slot)) {
      if (held.mayBe(value) && !value.equals(wanted)) {
        longest = Math.max(longest, scrolling(scroll, values, value, to));
      }
    }
    return longest;
  }

  private long scrolling(Entry.Scroll scroll, List<Value> values, Value held, int to) {
    int from = values.indexOf(held);
    if (from < 0) {
      return graph.keys(1);
    }
    return Cursor.way(
            from, to, values.size(), scroll.wraps(), scroll.next(), scroll.previous(), graph::has)
        .map(way -> graph.keys(way.size()))
        .orElse(Cost.NEVER);
  }

  private static int differing(Slot slot, Value wanted, Value held) {
    if (!held.known() && slot.field().type() instanceof FieldType.OptionSet set) {
      return set.options().size();
    }
    return wanted instanceof Value.Members one && held instanceof Value.Members other
        ? Math.max(1, Long.bitCount(one.bits() ^ other.bits()))
        : 1;
  }

  private long lettering(Entry.Lettered lettered, Value wanted, Value held) {
    if (!(wanted instanceof Value.Text text)) {
      return Cost.NEVER;
    }
    long anew = tapping(text.text());
    if (!lettered.fromCurrent()) {
      return text.text().isEmpty() ? graph.keys(1) : anew;
    }
    // Cleared and typed anew, or erased down to some of what is right already.
    long least = Cost.sum(graph.keys(1), anew);
    if (held instanceof Value.Text old) {
      for (int kept = 0; kept <= TextMoves.common(old.text(), text.text()); kept++) {
        least =
            Math.min(
                least,
                Cost.sum(
                    graph.keys(old.text().length() - kept), tapping(text.text().substring(kept))));
      }
    }
    return least;
  }

  private long tapping(String text) {
    return task.typist
        .letters(text, "", key -> true)
        .map(letters -> graph.keys(Typist.acts(letters, "")))
        .orElse(Cost.NEVER);
  }
}
