package keenward.files.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Target;
import keenward.files.panel.PanelDescriptionShape.BranchText;
import keenward.files.panel.PanelDescriptionShape.Range;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.yaml.YamlPointer;

/** Turns what a screen takes in into an entry. */
final class EntryBinder {
  private static final Action STAY =
      new Action(List.of(new Action.Branch(Condition.ALWAYS, List.of(), new Destination.Stay())));

  private final Vocabulary vocabulary;
  private final ActionBinder actions;
  private final Faults faults;

  EntryBinder(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
    this.actions = new ActionBinder(vocabulary, faults);
  }

  /** The entry of a screen that has one; empty where it has none, or a fault was reported. */
  Optional<Entry> bind(String screen, Fields fields) {
    Map<Field<Fields>, BiFunction<String, Fields, Optional<Entry>>> kinds = new LinkedHashMap<>();
    kinds.put(PanelDescriptionShape.SCREEN_DIGITS, this::typed);
    kinds.put(PanelDescriptionShape.SCREEN_CODE, this::coded);
    kinds.put(PanelDescriptionShape.SCREEN_SCROLL, this::scroll);
    kinds.put(PanelDescriptionShape.SCREEN_MENU, this::menu);
    kinds.put(PanelDescriptionShape.SCREEN_SWITCH, this::switched);
    kinds.put(PanelDescriptionShape.SCREEN_SWITCH_AT_CURSOR, this::switchedAtCursor);
    kinds.put(PanelDescriptionShape.SCREEN_LETTERS, this::lettered);
    kinds.put(PanelDescriptionShape.SCREEN_WORD_NUMBER, this::wordByNumber);
    kinds.put(PanelDescriptionShape.SCREEN_WORD_SCROLL, this::wordByScroll);
    kinds.put(PanelDescriptionShape.SCREEN_HEAR, this::hear);
    List<Field<Fields>> given = kinds.keySet().stream().filter(fields::mentions).toList();
    if (given.size() > 1) {
      faults.add(
          screen,
          "a screen with several entries: "
              + String.join(", ", given.stream().map(Field::name).toList()),
          "at most one",
          "split it into several screens");
      return Optional.empty();
    }
    Optional<Entry> entry = Optional.empty();
    for (Field<Fields> kind : given) {
      String pointer = YamlPointer.child(screen, kind.name());
      entry =
          fields
              .find(kind)
              .filter(Fields::isComplete)
              .flatMap(inner ->
                  Optional.ofNullable(kinds.get(kind)).flatMap(bind -> bind.apply(pointer, inner)));
    }
    return entry;
  }

  private Optional<Entry> typed(String pointer, Fields fields) {
    Range length = fields.get(PanelDescriptionShape.TYPED_LENGTH);
    Optional<Target> target = target(pointer, fields, true);
    Optional<Action> then = then(pointer, fields);
    if (length.least() < 1 || length.most() > 40) {
      faults.add(
          pointer + "/length",
          "an entry of " + length.least() + " to " + length.most() + " digits",
          "1 to 40 digits",
          "mend the length");
    }
    boolean advances = fields.find(PanelDescriptionShape.ADVANCES).orElse(false);
    String confirm = key(pointer, fields, PanelDescriptionShape.CONFIRM);
    if (!advances && !fields.mentions(PanelDescriptionShape.CONFIRM)) {
      faults.add(
          pointer,
          "digits that nothing confirms",
          "confirm: KEY, or advances: yes",
          "add one of them");
    }
    if (target.isEmpty() || then.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Entry.Typed(
            target.get(),
            length.least(),
            length.most(),
            fields.find(PanelDescriptionShape.TYPED_HEXADECIMAL).orElse(false),
            advances,
            confirm,
            key(pointer, fields, PanelDescriptionShape.ERASE),
            then.get(),
            action(pointer, fields, PanelDescriptionShape.EMPTY),
            action(pointer, fields, PanelDescriptionShape.WRONG)));
  }

  private Optional<Entry> coded(String pointer, Fields fields) {
    Optional<Target> target = target(pointer, fields, false);
    Optional<Action> then = then(pointer, fields);
    if (target.isEmpty() || then.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Entry.Coded(
            target.get(),
            key(pointer, fields, PanelDescriptionShape.CONFIRM),
            then.get(),
            action(pointer, fields, PanelDescriptionShape.EMPTY),
            action(pointer, fields, PanelDescriptionShape.WRONG)));
  }

  private Optional<Target> target(String pointer, Fields fields, boolean digits) {
    List<Optional<Target>> targets = new ArrayList<>();
    List<String> given = new ArrayList<>();
    field(pointer, fields, PanelDescriptionShape.INTO, digits, given, targets, Target.ToField::new);
    field(pointer, fields, PanelDescriptionShape.AGAIN, digits, given, targets, Target.Repeat::new);
    field(pointer, fields, PanelDescriptionShape.EQUALS, digits, given, targets, Target.Check::new);
    if (fields.find(PanelDescriptionShape.ASIDE).orElse(false)) {
      given.add("aside");
      targets.add(Optional.of(new Target.Aside()));
    }
    if (digits) {
      fields
          .find(PanelDescriptionShape.RECORD_TARGET)
          .ifPresent(record -> {
            given.add("record");
            targets.add(vocabulary.record(pointer + "/record", record).map(Target.ToRecord::new));
          });
      if (fields.find(PanelDescriptionShape.LOCATION_TARGET).orElse(false)) {
        given.add("location");
        targets.add(Optional.of(new Target.ToLocation()));
      }
      fields
          .find(PanelDescriptionShape.ITEMS)
          .ifPresent(items -> {
            given.add("items");
            targets.add(items(pointer + "/items", items));
          });
    }
    if (given.size() != 1) {
      faults.add(
          pointer,
          given.isEmpty()
              ? "an entry without a goal"
              : "an entry with several goals: " + String.join(", ", given),
          digits
              ? "exactly one of into, record, location, aside, again, equals, items"
              : "exactly one of into, again, equals, aside",
          given.isEmpty() ? "say what the value is for" : "keep one");
      return Optional.empty();
    }
    return targets.getFirst();
  }

  private void field(
      String pointer,
      Fields fields,
      Field<String> key,
      boolean digits,
      List<String> given,
      List<Optional<Target>> targets,
      Function<FieldReference, Target> target) {
    fields
        .find(key)
        .ifPresent(name -> {
          String place = YamlPointer.child(pointer, key.name());
          given.add(key.name());
          targets.add(reference(place, name, digits ? TypeKind.TYPED : TypeKind.CODE).map(target));
        });
  }

  private Optional<Target> items(String pointer, Map<String, List<BranchText>> items) {
    Map<String, Action> bound = new LinkedHashMap<>();
    items.forEach((typed, action) ->
        actions
            .bind(YamlPointer.child(pointer, typed), action)
            .ifPresent(each -> bound.put(typed, each)));
    return bound.size() == items.size() ? Optional.of(new Target.ToItem(bound)) : Optional.empty();
  }

  /** What kinds of field an entry can take in. */
  private enum TypeKind {
    TYPED("a field that is typed as digits") {
      @Override
      boolean fits(FieldType type) {
        return !(type instanceof FieldType.FreeText
            || type instanceof FieldType.WordSequence
            || type instanceof FieldType.Code);
      }
    },
    CODE("a field of type code") {
      @Override
      boolean fits(FieldType type) {
        return type instanceof FieldType.Code;
      }
    },
    SCROLLED("a choice or a number") {
      @Override
      boolean fits(FieldType type) {
        return type instanceof FieldType.Choice || type instanceof FieldType.WholeNumber;
      }
    },
    CHOICE("a choice") {
      @Override
      boolean fits(FieldType type) {
        return type instanceof FieldType.Choice;
      }
    },
    SET("a set") {
      @Override
      boolean fits(FieldType type) {
        return type instanceof FieldType.OptionSet;
      }
    },
    TEXT("a text") {
      @Override
      boolean fits(FieldType type) {
        return type instanceof FieldType.FreeText;
      }
    },
    WORDS("a word list") {
      @Override
      boolean fits(FieldType type) {
        return type instanceof FieldType.WordSequence;
      }
    },
    SERIAL("a serial") {
      @Override
      boolean fits(FieldType type) {
        return type instanceof FieldType.Serial;
      }
    };

    private final String expectation;

    TypeKind(String expectation) {
      this.expectation = expectation;
    }

    abstract boolean fits(FieldType type);
  }

  private Optional<FieldReference> reference(String pointer, String name, TypeKind kind) {
    Optional<FieldReference> reference = vocabulary.reference(pointer, name);
    Optional<FieldType> type = reference.isPresent() ? vocabulary.type(name) : Optional.empty();
    if (type.isPresent() && !kind.fits(type.get())) {
      faults.add(
          pointer,
          name + " cannot be entered this way",
          kind.expectation,
          "use another kind of entry, or another field");
      return Optional.empty();
    }
    return reference;
  }

  private Optional<FieldReference> entryField(String pointer, Fields fields, TypeKind kind) {
    return reference(pointer + "/field", fields.get(PanelDescriptionShape.ENTRY_FIELD), kind);
  }

  private Optional<Entry> scroll(String pointer, Fields fields) {
    Optional<FieldReference> field = entryField(pointer, fields, TypeKind.SCROLLED);
    Optional<Action> then = then(pointer, fields);
    needsMove(pointer, fields);
    if (field.isEmpty() || then.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Entry.Scroll(
            field.get(),
            key(pointer, fields, PanelDescriptionShape.NEXT),
            key(pointer, fields, PanelDescriptionShape.PREVIOUS),
            fields.find(PanelDescriptionShape.WRAPS).orElse(false),
            needed(pointer, fields),
            then.get()));
  }

  private void needsMove(String pointer, Fields fields) {
    if (!fields.mentions(PanelDescriptionShape.NEXT)
        && !fields.mentions(PanelDescriptionShape.PREVIOUS)) {
      faults.add(pointer, "nothing moves on", "next: KEY or previous: KEY", "add one of them");
    }
  }

  /** The confirm key of an entry that cannot do without. */
  private String needed(String pointer, Fields fields) {
    if (!fields.mentions(PanelDescriptionShape.CONFIRM)) {
      faults.add(
          pointer, "an entry that nothing confirms", "confirm: KEY", "add the key that confirms");
    }
    return key(pointer, fields, PanelDescriptionShape.CONFIRM);
  }

  private Optional<Entry> menu(String pointer, Fields fields) {
    List<Entry.Item> items = new ArrayList<>();
    Map<String, List<BranchText>> given = fields.get(PanelDescriptionShape.MENU_ITEMS);
    given.forEach((shown, action) ->
        actions
            .bind(YamlPointer.child(pointer + "/items", shown), action)
            .ifPresent(bound -> items.add(new Entry.Item(shown, bound))));
    if (given.isEmpty()) {
      faults.add(pointer + "/items", "a menu without items", "at least one", "add one");
    }
    if (given.size() > 1) {
      needsMove(pointer, fields);
    }
    String confirm = needed(pointer, fields);
    return items.size() == given.size() && !items.isEmpty()
        ? Optional.of(
            new Entry.Menu(
                items,
                key(pointer, fields, PanelDescriptionShape.NEXT),
                key(pointer, fields, PanelDescriptionShape.PREVIOUS),
                fields.find(PanelDescriptionShape.WRAPS).orElse(false),
                confirm))
        : Optional.empty();
  }

  private Optional<Entry> switched(String pointer, Fields fields) {
    Optional<FieldReference> field = entryField(pointer, fields, TypeKind.SET);
    Optional<Action> then = then(pointer, fields);
    boolean atOnce = fields.find(PanelDescriptionShape.AT_ONCE).orElse(false);
    String confirm =
        atOnce ? key(pointer, fields, PanelDescriptionShape.CONFIRM) : needed(pointer, fields);
    return field.isEmpty() || then.isEmpty()
        ? Optional.empty()
        : Optional.of(new Entry.ToggleByCode(field.get(), atOnce, confirm, then.get()));
  }

  private Optional<Entry> switchedAtCursor(String pointer, Fields fields) {
    Optional<FieldReference> field = entryField(pointer, fields, TypeKind.SET);
    Optional<Action> then = then(pointer, fields);
    needsMove(pointer, fields);
    String confirm = needed(pointer, fields);
    return field.isEmpty() || then.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Entry.ToggleByCursor(
                field.get(),
                key(pointer, fields, PanelDescriptionShape.NEXT),
                key(pointer, fields, PanelDescriptionShape.PREVIOUS),
                fields.find(PanelDescriptionShape.WRAPS).orElse(false),
                key(pointer, fields, PanelDescriptionShape.SWITCH_KEY),
                confirm,
                then.get()));
  }

  private Optional<Entry> lettered(String pointer, Fields fields) {
    Optional<FieldReference> field = entryField(pointer, fields, TypeKind.TEXT);
    Optional<Action> then = then(pointer, fields);
    String confirm = needed(pointer, fields);
    if (faults.declared("/typing/letters").isEmpty()) {
      faults.add(
          pointer,
          "text by multi-tap, and no letters",
          "letters under typing",
          "add typing: { letters: ... }");
    }
    return field.isEmpty() || then.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Entry.Lettered(
                field.get(),
                fields.find(PanelDescriptionShape.FROM_CURRENT).orElse(false),
                key(pointer, fields, PanelDescriptionShape.ADVANCE),
                key(pointer, fields, PanelDescriptionShape.ERASE),
                key(pointer, fields, PanelDescriptionShape.CLEAR),
                confirm,
                then.get(),
                action(pointer, fields, PanelDescriptionShape.EMPTY)));
  }

  private Optional<Entry> wordByNumber(String pointer, Fields fields) {
    Optional<FieldReference> field = entryField(pointer, fields, TypeKind.WORDS);
    Optional<Action> then = then(pointer, fields);
    String confirm = needed(pointer, fields);
    return field.isEmpty() || then.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Entry.WordByNumber(
                field.get(),
                fields.get(PanelDescriptionShape.WORD_DIGITS),
                key(pointer, fields, PanelDescriptionShape.ERASE),
                confirm,
                then.get(),
                action(pointer, fields, PanelDescriptionShape.EMPTY)));
  }

  private Optional<Entry> wordByScroll(String pointer, Fields fields) {
    Optional<FieldReference> field = entryField(pointer, fields, TypeKind.WORDS);
    Optional<Action> then = then(pointer, fields);
    needsMove(pointer, fields);
    String confirm = needed(pointer, fields);
    return field.isEmpty() || then.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Entry.WordByScroll(
                field.get(),
                key(pointer, fields, PanelDescriptionShape.NEXT),
                key(pointer, fields, PanelDescriptionShape.PREVIOUS),
                fields.find(PanelDescriptionShape.WRAPS).orElse(false),
                key(pointer, fields, PanelDescriptionShape.ADD),
                key(pointer, fields, PanelDescriptionShape.ERASE),
                confirm,
                then.get(),
                action(pointer, fields, PanelDescriptionShape.EMPTY)));
  }

  private Optional<Entry> hear(String pointer, Fields fields) {
    Optional<FieldReference> serial =
        reference(
            pointer + "/serial", fields.get(PanelDescriptionShape.HEAR_SERIAL), TypeKind.SERIAL);
    Optional<String> partName = fields.find(PanelDescriptionShape.HEAR_PART);
    Optional<FieldReference> part =
        partName.flatMap(name -> reference(pointer + "/part", name, TypeKind.CHOICE));
    Optional<Action> then = then(pointer, fields);
    Optional<Action> expired = action(pointer, fields, PanelDescriptionShape.HEAR_EXPIRED);
    int wait = Tenths.of(faults, pointer + "/wait", fields.get(PanelDescriptionShape.HEAR_WAIT));
    if (wait == 0) {
      faults.add(
          pointer + "/wait", "listens for no time at all", "a time such as 90 s", "mend the time");
    }
    if (serial.isEmpty()
        || partName.isPresent() != part.isPresent()
        || then.isEmpty()
        || expired.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Entry.Hear(
            serial.get(),
            part,
            wait,
            fields.find(PanelDescriptionShape.HEAR_TIMES).orElse(1),
            then.get(),
            action(pointer, fields, PanelDescriptionShape.HEAR_KNOWN),
            expired.get()));
  }

  private Optional<Action> then(String pointer, Fields fields) {
    return fields.mentions(PanelDescriptionShape.THEN)
        ? action(pointer, fields, PanelDescriptionShape.THEN)
        : Optional.of(STAY);
  }

  private Optional<Action> action(String pointer, Fields fields, Field<List<BranchText>> field) {
    return fields
        .find(field)
        .flatMap(texts -> actions.bind(YamlPointer.child(pointer, field.name()), texts));
  }

  private String key(String pointer, Fields fields, Field<String> field) {
    return fields
        .find(field)
        .flatMap(key -> vocabulary.key(YamlPointer.child(pointer, field.name()), key))
        .orElse("");
  }
}
