package keenward.core.dialogue.lint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.TypedForm;

/** The trials worth trying in a state: every key, and every kind of value that can be entered. */
final class Trials {
  private static final int MOST_VALUES = 64;

  private final Interpreter interpreter;
  private final PanelDescription description;
  private final State state;
  private final String keypad;
  private final List<Trial> trials = new ArrayList<>();

  private Trials(Interpreter interpreter, State state, String keypad) {
    this.interpreter = interpreter;
    this.description = interpreter.description();
    this.state = state;
    this.keypad = keypad;
  }

  static List<Trial> of(Interpreter interpreter, State state) {
    List<Trial> all = new ArrayList<>();
    boolean open = interpreter.programmingOpen(state);
    for (KeypadKind kind : description(interpreter)) {
      if (!open || kind.name().equals(state.keypad())) {
        all.addAll(new Trials(interpreter, state, kind.name()).keyed());
      }
    }
    all.addAll(new Trials(interpreter, state, state.keypad()).others(open));
    return all;
  }

  private static List<KeypadKind> description(Interpreter interpreter) {
    return interpreter.description().keypads();
  }

  private List<Trial> keyed() {
    int restart = interpreter.restartTenths(state, keypad);
    if (!state.powered()) {
      return List.of();
    }
    if (restart > 0) {
      return List.of(new Trial(List.of(new Input.TimePasses(restart)), true));
    }
    screen().keys().keySet().forEach(key -> keys(List.of(key)));
    screen().entry().ifPresent(this::entry);
    return trials;
  }

  private List<Trial> others(boolean open) {
    screen()
        .after()
        .ifPresent(
            after -> trials.add(new Trial(List.of(new Input.TimePasses(after.tenths())), true)));
    if (open && description.manners().idleTenths() > 0) {
      trials.add(
          new Trial(List.of(new Input.TimePasses(description.manners().idleTenths())), false));
    }
    if (!open) {
      trials.add(new Trial(List.of(new Input.PowerLost(), new Input.PowerBack()), false));
    }
    return trials;
  }

  private Screen screen() {
    Screen screen = description.screens().get(state.screen());
    if (screen == null) {
      throw new IllegalStateException("no screen " + state.screen());
    }
    return screen;
  }

  private void keys(List<String> keys) {
    List<Input> inputs = new ArrayList<>();
    for (String key : keys) {
      if (!key.isEmpty()) {
        inputs.add(new Input.Press(keypad, key));
      }
    }
    trials.add(new Trial(inputs, true));
  }

  private void keys(List<String> keys, String last) {
    List<String> all = new ArrayList<>(keys);
    all.add(last);
    keys(all);
  }

  private void entry(Entry entry) {
    switch (entry) {
      case Entry.Typed typed -> typed(typed);
      case Entry.Coded coded -> coded(coded);
      case Entry.Scroll scroll -> {
        int size = scrollSize(scroll.field());
        scrolled(scroll.next(), scroll.previous(), scroll.wraps(), scroll.confirm(), size);
      }
      case Entry.Menu menu ->
          scrolled(menu.next(), menu.previous(), menu.wraps(), menu.confirm(), menu.items().size());
      case Entry.ToggleByCode toggle -> {
        keys(List.of(toggle.confirm()));
        for (FieldType.Option option : options(toggle.field())) {
          keyFor(option.code()).ifPresent(key -> keys(List.of(key), toggle.confirm()));
        }
      }
      case Entry.ToggleByCursor toggle -> {
        keys(List.of(toggle.confirm()));
        keys(List.of(toggle.toggle()), toggle.confirm());
        keys(List.of(toggle.next(), toggle.toggle()), toggle.confirm());
      }
      case Entry.Lettered lettered -> {
        keys(List.of(lettered.confirm()));
        keys(List.of(lettered.clear()), lettered.confirm());
        description
            .keyMeanings()
            .letters()
            .keySet()
            .forEach(key -> keys(List.of(key), lettered.confirm()));
      }
      case Entry.WordByNumber words -> {
        keys(List.of(words.confirm()));
        typing(padded("1", words.digits())).ifPresent(keys -> keys(keys, words.confirm()));
      }
      case Entry.WordByScroll words -> {
        keys(List.of(words.confirm()));
        keys(List.of(words.add()), words.confirm());
      }
      case Entry.Hear hear -> hear(hear);
    }
  }

  private void typed(Entry.Typed entry) {
    keys(List.of(entry.confirm()));
    for (String text : texts(entry)) {
      String whole = padded(text, entry.least());
      boolean byItself = entry.advances() && whole.length() == entry.most();
      typing(whole).ifPresent(keys -> keys(keys, byItself ? "" : entry.confirm()));
    }
  }

  /** What locations of one field on one screen have in common. */
  static String group(Location location) {
    return location.screen() + " " + location.field();
  }

  private Set<String> texts(Entry.Typed entry) {
    Set<String> texts = new LinkedHashSet<>();
    switch (entry.target()) {
      case Target.ToField to -> texts.addAll(texts(to.field()));
      case Target.ToRecord to ->
          description
              .findRecord(to.record())
              .ifPresent(kind -> {
                texts.add(Integer.toString(kind.first()));
                texts.add(Integer.toString(kind.last()));
              });
      case Target.ToLocation to -> {
        Map<String, String> last = new LinkedHashMap<>();
        for (Location location : description.locations()) {
          String number = Integer.toString(location.number());
          if (last.put(group(location), number) == null) {
            texts.add(number);
          }
        }
        texts.addAll(last.values());
      }
      case Target.Aside to -> texts.add(sample(entry.most()));
      case Target.Repeat to -> {
        texts.add(state.aside());
        texts.add(padded("", entry.most()));
      }
      case Target.Check to -> {
        interpreter
            .slot(state, to.field())
            .flatMap(slot -> TypedForm.write(slot.field().type(), state.working().get(slot)))
            .ifPresent(texts::add);
        texts.add(sample(entry.most()));
      }
      case Target.ToItem to -> texts.addAll(to.items().keySet());
    }
    return texts;
  }

  private List<String> texts(FieldReference reference) {
    List<String> texts = new ArrayList<>();
    Optional<Slot> slot = interpreter.slot(state, reference);
    if (slot.isPresent()) {
      FieldType type = slot.get().field().type();
      for (Value value : interpreter.completions(slot.get(), MOST_VALUES)) {
        TypedForm.write(type, value).ifPresent(texts::add);
      }
      switch (type) {
        case FieldType.WholeNumber number -> {
          TypedForm.write(type, new Value.Whole(number.least())).ifPresent(texts::add);
          TypedForm.write(type, new Value.Whole(number.most())).ifPresent(texts::add);
        }
        case FieldType.Digits digits -> texts.add(sample(digits.most()));
        case FieldType.Serial serial -> texts.add(sample(serial.most()));
        default -> {
          // The completions say it all.
        }
      }
    }
    return texts;
  }

  private void coded(Entry.Coded entry) {
    Set<String> codes = new LinkedHashSet<>();
    switch (entry.target()) {
      case Target.Check to ->
          interpreter
              .slot(state, to.field())
              .map(slot -> state.working().get(slot))
              .ifPresent(value -> {
                if (value instanceof Value.Secret secret) {
                  codes.add("code:" + secret.reference());
                }
              });
      case Target.Repeat to -> codes.add(state.aside());
      default -> {
        // Any code will do.
      }
    }
    codes.add("code:some other");
    keys(List.of(entry.confirm()));
    for (String code : codes) {
      keys(List.of(code), entry.confirm());
    }
  }

  /** One way is enough where the list goes round; the other is tried by one step. */
  private void scrolled(String next, String previous, boolean wraps, String confirm, int size) {
    List<String> forward = new ArrayList<>();
    List<String> backward = new ArrayList<>();
    keys(List.of(confirm));
    for (int step = 1; step < size; step++) {
      forward.add(next);
      backward.add(previous);
      if (!next.isEmpty()) {
        keys(forward, confirm);
      }
      if (!previous.isEmpty() && (step == 1 || !wraps || next.isEmpty())) {
        keys(backward, confirm);
      }
    }
  }

  /** Numbers are scrolled one step only: which of them it is decides little. */
  private int scrollSize(FieldReference reference) {
    return interpreter
        .slot(state, reference)
        .map(slot ->
            slot.field().type() instanceof FieldType.Choice choice ? choice.options().size() : 2)
        .orElse(1);
  }

  private List<FieldType.Option> options(FieldReference reference) {
    return interpreter
        .slot(state, reference)
        .map(slot ->
            slot.field().type() instanceof FieldType.OptionSet set
                ? set.options()
                : List.<FieldType.Option>of())
        .orElse(List.of());
  }

  private void hear(Entry.Hear entry) {
    trials.add(new Trial(List.of(new Input.TimePasses(entry.waitTenths())), true));
    List<String> parts = new ArrayList<>();
    Optional<Slot> part = entry.part().flatMap(reference -> interpreter.slot(state, reference));
    if (part.isPresent() && part.get().field().type() instanceof FieldType.Choice choice) {
      choice.options().forEach(option -> parts.add(option.word()));
    } else {
      parts.add("");
    }
    Optional<Slot> serial = interpreter.slot(state, entry.serial());
    if (serial.isPresent() && serial.get().field().type() instanceof FieldType.Serial type) {
      for (String name : parts) {
        List<Input> inputs = new ArrayList<>();
        for (int time = 0; time < entry.times(); time++) {
          inputs.add(new Input.TransmitterHeard(sample(type.most()), name));
        }
        trials.add(new Trial(inputs, true));
      }
    }
  }

  /** The keys that type a text, where there are any. */
  private Optional<List<String>> typing(String text) {
    List<String> keys = new ArrayList<>();
    for (int place = 0; place < text.length(); place++) {
      String character = text.substring(place, place + 1);
      Optional<String> direct = keyFor(character);
      if (direct.isPresent()) {
        keys.add(direct.get());
        continue;
      }
      List<String> shifted = shiftedFor(character);
      if (shifted.isEmpty()) {
        return Optional.empty();
      }
      keys.addAll(shifted);
    }
    return Optional.of(keys);
  }

  private Optional<String> keyFor(String character) {
    for (Map.Entry<String, String> meaning : description.keyMeanings().direct().entrySet()) {
      if (meaning.getValue().equals(character)) {
        return Optional.of(meaning.getKey());
      }
    }
    return Optional.empty();
  }

  private List<String> shiftedFor(String character) {
    for (Map.Entry<String, Map<String, String>> shift :
        description.keyMeanings().shifted().entrySet()) {
      for (Map.Entry<String, String> meaning : shift.getValue().entrySet()) {
        if (meaning.getValue().equals(character)) {
          return List.of(shift.getKey(), meaning.getKey());
        }
      }
    }
    return List.of();
  }

  private static String sample(int length) {
    StringBuilder text = new StringBuilder();
    for (int place = 0; place < length; place++) {
      text.append('1');
    }
    return text.toString();
  }

  private static String padded(String text, int length) {
    StringBuilder padded = new StringBuilder(text);
    while (padded.length() < length) {
      padded.insert(0, '0');
    }
    return padded.toString();
  }
}
