package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Template;
import keenward.core.dialogue.description.Value;

/** What a keypad shows in a state. */
final class Renderer {
  private final Rules rules;
  private final State state;
  private final Set<Slot> unknown = new LinkedHashSet<>();

  private Renderer(Rules rules, State state) {
    this.rules = rules;
    this.state = state;
  }

  static Display display(Rules rules, State state, String keypad) {
    return new Renderer(rules, state).display(keypad);
  }

  private Display display(String keypad) {
    Optional<KeypadKind> kind = rules.description.findKeypad(keypad);
    if (kind.isEmpty() || !state.powered() || state.clocks().deaf() > 0) {
      return new Display(List.of(), List.of());
    }
    Screen screen = rules.screen(state.screen());
    List<Template> templates =
        kind.get().shows() == KeypadKind.Shows.TEXT
            ? screen.elsewhere().getOrDefault(keypad, screen.lines())
            : screen.elsewhere().getOrDefault(keypad, List.of());
    List<String> lines = new ArrayList<>();
    for (Template template : templates) {
      StringBuilder line = new StringBuilder();
      for (Template.Part part : template.parts()) {
        line.append(text(screen, part));
      }
      lines.add(line.toString());
    }
    return new Display(lines, List.copyOf(unknown));
  }

  private String text(Screen screen, Template.Part part) {
    return switch (part) {
      case Template.Literal literal -> literal.text();
      case Template.TypedText typed -> typed(screen, typed);
      case Template.FieldText field -> field(screen, field);
      case Template.RecordNumber number ->
          TypedForm.padded(state.record(rules.kind(number.record())), number.width());
      case Template.UnderCursor cursor -> underCursor(screen);
      case Template.OtherRecord other -> state.other() < 0 ? "-" : Integer.toString(state.other());
      case Template.LocationNumber number ->
          state.location() < 0 ? "-" : TypedForm.padded(state.location(), number.width());
    };
  }

  private String typed(Screen screen, Template.TypedText part) {
    Typing typing = state.typing();
    if (!typing.touched() && part.otherwise().isPresent()) {
      return stored(part.otherwise().get(), 0);
    }
    StringBuilder text = new StringBuilder(String.join(" ", typing.words()));
    if (!typing.words().isEmpty() && !typing.text().isEmpty()) {
      text.append(' ');
    }
    text.append(typing.text());
    if (text.indexOf(Rules.CODE) == 0) {
      return codeStars(screen);
    }
    return part.masked() ? ShownForm.repeated('*', text.length()) : text.toString();
  }

  private String codeStars(Screen screen) {
    if (screen.entry().isPresent() && screen.entry().get() instanceof Entry.Coded coded) {
      Optional<FieldReference> field =
          switch (coded.target()) {
            case Target.ToField to -> Optional.of(to.field());
            case Target.Repeat to -> Optional.of(to.field());
            case Target.Check to -> Optional.of(to.field());
            default -> Optional.empty();
          };
      if (field.isPresent()) {
        Optional<Slot> slot = slot(field.get());
        if (slot.isPresent()) {
          return ShownForm.stars(slot.get().field().type());
        }
      }
    }
    return "*";
  }

  private String field(Screen screen, Template.FieldText part) {
    Optional<Value> pending = pending(screen, part.field());
    if (pending.isPresent()) {
      Optional<Slot> slot = slot(part.field());
      return slot.isEmpty()
          ? "-"
          : ShownForm.of(slot.get().field().type(), pending.get(), part.width());
    }
    return stored(part.field(), part.width());
  }

  private String stored(FieldReference reference, int width) {
    Optional<Slot> slot = slot(reference);
    if (slot.isEmpty()) {
      return "-";
    }
    Value value = state.working().get(slot.get());
    if (!value.known()) {
      unknown.add(slot.get());
    }
    return ShownForm.of(slot.get().field().type(), value, width);
  }

  /** The value that is being scrolled to or switched, where it is {@code field}'s. */
  private Optional<Value> pending(Screen screen, FieldReference field) {
    Typing typing = state.typing();
    if (!typing.touched() || screen.entry().isEmpty()) {
      return Optional.empty();
    }
    return switch (screen.entry().get()) {
      case Entry.Scroll scroll when scroll.field().equals(field) ->
          slot(field).map(slot -> Scrolled.at(slot.field().type(), typing.position()));
      case Entry.ToggleByCode toggle when toggle.field().equals(field) && !toggle.atOnce() ->
          Optional.of(new Value.Members(typing.bits()));
      case Entry.ToggleByCursor toggle when toggle.field().equals(field) ->
          Optional.of(new Value.Members(typing.bits()));
      default -> Optional.empty();
    };
  }

  private String underCursor(Screen screen) {
    if (screen.entry().isEmpty()) {
      return "-";
    }
    int position = Math.max(0, state.typing().position());
    return switch (screen.entry().get()) {
      case Entry.Menu menu -> menu.items().get(position).shown();
      case Entry.Scroll scroll -> field(screen, new Template.FieldText(scroll.field(), 0));
      case Entry.ToggleByCursor toggle -> {
        Optional<Slot> slot = slot(toggle.field());
        yield slot.isPresent() && slot.get().field().type() instanceof FieldType.OptionSet set
            ? set.options().get(position).shown()
            : "-";
      }
      case Entry.WordByScroll words -> {
        Optional<Slot> slot = slot(words.field());
        yield slot.isPresent() && slot.get().field().type() instanceof FieldType.WordSequence list
            ? list.words().get(position)
            : "-";
      }
      default -> "-";
    };
  }

  private Optional<Slot> slot(FieldReference reference) {
    return rules.slot(reference, state::record, state.location());
  }
}
