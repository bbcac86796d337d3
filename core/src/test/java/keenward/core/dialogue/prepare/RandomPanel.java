package keenward.core.dialogue.prepare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Capacity;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Manners;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Template;
import keenward.core.dialogue.description.Value;

/** Tiny panels of random shape: few fields, few keys, so that every state can be listed. */
final class RandomPanel {
  static final String KEYPAD = "pad";
  private final Random random;
  private final List<Field> fields = new ArrayList<>();
  private final Map<String, Screen> screens = new LinkedHashMap<>();
  private final List<String> places = new ArrayList<>();

  RandomPanel(long seed) {
    this.random = new Random(seed);
  }

  PanelDescription description() {
    int zoneFields = 1 + random.nextInt(2);
    for (int index = 0; index < zoneFields; index++) {
      fields.add(field("zone.f" + index, "zone", index == 0 ? 0 : random.nextInt(5)));
    }
    if (random.nextInt(3) == 0) {
      fields.add(field("single", "", random.nextInt(5)));
    }
    addReset();
    for (Field field : fields) {
      places.add(field.name());
    }
    places.add("top");
    places.add("number");
    screens();
    boolean atOnce = random.nextBoolean();
    return new PanelDescription(
        "Random",
        "random",
        List.of(
            new KeypadKind(KEYPAD, KeypadKind.Shows.TEXT, 2, 40, List.of(), 0, keys(), 2, true, 0)),
        new KeyMeanings(
            Map.of("1", "1", "2", "2"), Map.of(), Map.of("1", "AB"), random.nextBoolean() ? 0 : 9),
        new Capacity(
            Map.of(),
            Map.of(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            List.of(),
            OptionalInt.empty()),
        List.of(new RecordKind("zone", 1, 2)),
        fields,
        screens,
        List.of(),
        "ready",
        Map.of(
            "keeping",
                new Leaving(
                    "keeping",
                    atOnce || random.nextInt(4) > 0
                        ? Leaving.Saves.CONFIRMED
                        : Leaving.Saves.TYPED_TOO,
                    "ready",
                    0,
                    false,
                    true),
            "dropping", new Leaving("dropping", Leaving.Saves.NOTHING, "ready", 0, false, false)),
        new Manners(
            atOnce,
            Optional.of(new Leaving("idle", Leaving.Saves.NOTHING, "ready", 0, false, false)),
            600,
            new Leaving("power lost", Leaving.Saves.NOTHING, "ready", 0, false, false),
            0,
            List.of()),
        List.of());
  }

  private static Map<String, Integer> keys() {
    Map<String, Integer> keys = new LinkedHashMap<>();
    for (String key : List.of("1", "2", "next", "back", "ok", "x", "y")) {
      keys.put(key, 0);
    }
    return keys;
  }

  private static FieldType.Option option(String word, String code) {
    return new FieldType.Option(word, code, word);
  }

  private Field field(String name, String record, int kind) {
    FieldType type =
        switch (kind) {
          case 0 ->
              new FieldType.Choice(
                  List.of(option("red", "1"), option("green", "2"), option("blue", "12")));
          case 1 -> new FieldType.WholeNumber(1, 4, 1, "", 1, 0, List.of());
          case 2 ->
              new FieldType.OptionSet(
                  List.of(option("p", "1"), option("q", "2")), FieldType.Written.LIST);
          case 3 -> new FieldType.FreeText(2, "AB");
          default -> new FieldType.Digits(1, 2, false);
        };
    return new Field(
        name, record, type, any(type), List.of(), Condition.ALWAYS, false, Optional.empty());
  }

  /** Sometimes a change of the first field puts the second back. */
  private void addReset() {
    if (fields.size() > 1 && fields.get(1).byRecord() && random.nextInt(3) == 0) {
      Field first = fields.get(0);
      fields.set(
          0,
          new Field(
              first.name(),
              first.record(),
              first.type(),
              first.initial(),
              List.of(new Effect.Reset(named(fields.get(1).name()))),
              Condition.ALWAYS,
              false,
              Optional.empty()));
    }
  }

  /** Any value that the type holds. */
  Value any(FieldType type) {
    return switch (type) {
      case FieldType.Choice choice ->
          new Value.Word(choice.options().get(random.nextInt(choice.options().size())).word());
      case FieldType.WholeNumber number ->
          new Value.Whole(number.least() + random.nextInt(number.most() - number.least() + 1));
      case FieldType.OptionSet set -> new Value.Members(random.nextInt(4));
      case FieldType.FreeText text ->
          new Value.Text(List.of("", "A", "B", "AB", "BB", "AA").get(random.nextInt(6)));
      default -> new Value.Text(List.of("1", "2", "12", "21", "11").get(random.nextInt(5)));
    };
  }

  private static FieldReference named(String field) {
    return new FieldReference.Named(field);
  }

  private void screens() {
    put("ready", false, Optional.empty(), Map.of("x", Action.to("top")));
    List<Entry.Item> items = new ArrayList<>();
    for (String place : places) {
      if (!place.equals("top")) {
        items.add(new Entry.Item(place, Action.to(place)));
      }
    }
    items.add(new Entry.Item("keep", leave("keeping")));
    put(
        "top",
        true,
        Optional.of(new Entry.Menu(items, "next", "back", random.nextBoolean(), "ok")),
        random.nextBoolean() ? Map.of("y", leave("dropping")) : Map.of("x", leave("keeping")));
    put(
        "number",
        true,
        Optional.of(
            new Entry.Typed(
                new Target.ToRecord("zone"),
                1,
                1,
                false,
                random.nextBoolean(),
                "ok",
                "back",
                action(),
                Optional.empty(),
                Optional.empty())),
        Map.of("x", Action.to("top")));
    for (int index = 0; index < fields.size(); index++) {
      Field field = fields.get(index);
      Map<String, Action> own = new LinkedHashMap<>();
      own.put("x", Action.to("top"));
      if (random.nextBoolean()) {
        own.put("y", action());
      }
      put(field.name(), true, Optional.of(entry(field)), own);
    }
    screens.put(
        "short",
        new Screen(
            "short",
            true,
            List.of(new Template(List.of(new Template.Literal("wait")))),
            Map.of(),
            Optional.empty(),
            Map.of(),
            Optional.of(new Screen.Timed(20, Action.to("top"))),
            Optional.empty()));
  }

  private void put(
      String name, boolean programming, Optional<Entry> entry, Map<String, Action> keys) {
    List<Template.Part> parts = new ArrayList<>();
    parts.add(new Template.Literal(name + " "));
    parts.add(new Template.RecordNumber("zone", 1));
    parts.add(new Template.Literal(" "));
    for (Field field : fields) {
      if (field.name().equals(name)) {
        parts.add(
            entry.filter(RandomPanel::typed).isPresent()
                ? new Template.TypedText(false, Optional.of(named(name)))
                : new Template.FieldText(named(name), 0));
      }
    }
    if (name.equals("top")) {
      parts.add(new Template.UnderCursor());
    }
    screens.put(
        name,
        new Screen(
            name,
            programming,
            List.of(new Template(parts)),
            Map.of(),
            entry,
            keys,
            Optional.empty(),
            Optional.empty()));
  }

  private static boolean typed(Entry entry) {
    return entry instanceof Entry.Typed || entry instanceof Entry.Lettered;
  }

  private static Action leave(String way) {
    return new Action(
        List.of(new Action.Branch(Condition.ALWAYS, List.of(), new Destination.Leave(way))));
  }

  /** To some place, perhaps with an effect, perhaps depending on the first field. */
  private Action action() {
    List<Action.Branch> branches = new ArrayList<>();
    if (random.nextInt(3) == 0) {
      branches.add(
          new Action.Branch(
              new Condition.FieldIs(named("zone.f0"), List.of(new Value.Word("red"))),
              List.of(),
              new Destination.ToScreen(place())));
    }
    branches.add(new Action.Branch(Condition.ALWAYS, effects(), new Destination.ToScreen(place())));
    return new Action(branches);
  }

  private List<Effect> effects() {
    return switch (random.nextInt(8)) {
      case 0 -> List.of(new Effect.MoveRecord("zone", Effect.Move.NEXT, true));
      case 1 -> List.of(new Effect.Reset(named("zone.f0")));
      case 2 -> List.of(new Effect.Keep());
      default -> List.of();
    };
  }

  private String place() {
    return random.nextInt(12) == 0 ? "short" : places.get(random.nextInt(places.size()));
  }

  private Entry entry(Field field) {
    FieldReference of = named(field.name());
    boolean wraps = random.nextBoolean();
    boolean mayPass = random.nextInt(4) > 0;
    Optional<Action> empty = mayPass ? Optional.of(action()) : Optional.empty();
    return switch (field.type()) {
      case FieldType.OptionSet set ->
          random.nextBoolean()
              ? new Entry.ToggleByCode(of, random.nextBoolean(), "ok", action())
              : new Entry.ToggleByCursor(of, "next", "back", wraps, "1", "ok", action());
      case FieldType.FreeText text ->
          new Entry.Lettered(of, random.nextBoolean(), "next", "back", "2", "ok", action(), empty);
      case FieldType.Digits digits -> typed(of, 1, 2, empty);
      case FieldType.Choice choice ->
          random.nextBoolean()
              ? new Entry.Scroll(of, "next", "back", wraps, "ok", action())
              : typed(of, 1, 2, empty);
      default -> new Entry.Scroll(of, "next", "back", wraps, "ok", action());
    };
  }

  private Entry typed(FieldReference of, int least, int most, Optional<Action> empty) {
    return new Entry.Typed(
        new Target.ToField(of),
        least,
        most,
        false,
        random.nextBoolean(),
        "ok",
        "back",
        action(),
        empty,
        Optional.empty());
  }
}
