package keenward.core.dialogue.machine;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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

/** A tiny invented panel of three zones, built by hand, with one screen of most kinds. */
public final class SmallPanel {
  private SmallPanel() {}

  /** Keypad with text. */
  public static final String TEXT = "text";

  /** Keypad with lamps only. */
  public static final String LAMPS = "lamps";

  /** The description. */
  public static PanelDescription description() {
    return description(false, Leaving.Saves.NOTHING);
  }

  /** The description, with what varies between tests. */
  public static PanelDescription description(boolean keepsAtOnce, Leaving.Saves idleSaves) {
    return new PanelDescription(
        "Small",
        "menu tree",
        List.of(
            new KeypadKind(TEXT, KeypadKind.Shows.TEXT, 2, 18, List.of(), 0, keys(), 4, true, 0),
            new KeypadKind(
                LAMPS,
                KeypadKind.Shows.LAMPS,
                1,
                0,
                List.of("open"),
                0,
                Map.of("ok", 0),
                2,
                false,
                100)),
        new KeyMeanings(
            digits(), Map.of("*", Map.of("1", "A", "2", "B")), Map.of("2", "AB2", "3", "DE3"), 15),
        new Capacity(
            Map.of(),
            Map.of(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            List.of(),
            OptionalInt.empty()),
        List.of(new RecordKind("zone", 1, 3)),
        fields(),
        screens(),
        List.of(),
        "ready",
        Map.of(
            "saving", new Leaving("saving", Leaving.Saves.CONFIRMED, "ready", 200, false, true),
            "slamming", new Leaving("slamming", Leaving.Saves.CONFIRMED, "ready", 0, true, false)),
        new Manners(
            keepsAtOnce,
            Optional.of(new Leaving("idle", idleSaves, "ready", 0, false, false)),
            600,
            new Leaving("power lost", Leaving.Saves.NOTHING, "ready", 0, false, false),
            100,
            List.of()),
        List.of());
  }

  private static Map<String, Integer> keys() {
    Map<String, Integer> keys = new LinkedHashMap<>();
    for (int digit = 0; digit <= 9; digit++) {
      keys.put(Integer.toString(digit), 0);
    }
    for (String key : List.of("ok", "back", "up", "down", "*", "#")) {
      keys.put(key, 0);
    }
    keys.put("hold ok", 30);
    return keys;
  }

  private static Map<String, String> digits() {
    Map<String, String> digits = new LinkedHashMap<>();
    for (int digit = 0; digit <= 9; digit++) {
      digits.put(Integer.toString(digit), Integer.toString(digit));
    }
    return digits;
  }

  static FieldReference named(String field) {
    return new FieldReference.Named(field);
  }

  static Action leave(String way) {
    return new Action(
        List.of(new Action.Branch(Condition.ALWAYS, List.of(), new Destination.Leave(way))));
  }

  private static FieldType.Option option(String word) {
    return new FieldType.Option(word, "", word);
  }

  private static Field field(String name, String record, FieldType type, Value initial) {
    return new Field(
        name, record, type, initial, List.of(), Condition.ALWAYS, false, Optional.empty());
  }

  private static List<Field> fields() {
    return List.of(
        field("code", "", new FieldType.Code(6, 6), new Value.Secret("factory")),
        field(
            "delay",
            "",
            new FieldType.WholeNumber(
                10, 60, 5, "s", 1, 0, List.of(new FieldType.Special("0", 0, "none"))),
            new Value.Whole(30)),
        field("account", "", new FieldType.Digits(4, 4, true), new Value.Text("0000")),
        new Field(
            "zone.kind",
            "zone",
            new FieldType.Choice(List.of(option("unused"), option("wired"), option("radio"))),
            new Value.Word("unused"),
            List.of(new Effect.Reset(named("zone.name"))),
            Condition.ALWAYS,
            false,
            Optional.empty()),
        field(
            "zone.groups",
            "zone",
            new FieldType.OptionSet(
                List.of(
                    new FieldType.Option("1", "1", "1"),
                    new FieldType.Option("2", "2", "2"),
                    new FieldType.Option("3", "3", "3")),
                FieldType.Written.LIST),
            new Value.Members(1)),
        field("zone.name", "zone", new FieldType.FreeText(4, "ABDE23"), new Value.Text("")),
        field("zone.unit", "zone", new FieldType.Serial(4, 4, false), Value.nothing()),
        field(
            "zone.part",
            "zone",
            new FieldType.Choice(List.of(option("magnet"), option("clamp"))),
            new Value.Word("magnet")));
  }

  static Template line(Template.Part... parts) {
    return new Template(List.of(parts));
  }

  static Template.Part text(String text) {
    return new Template.Literal(text);
  }

  static Template.Part value(String field) {
    return new Template.FieldText(named(field), 0);
  }

  private static Screen screen(
      String name,
      boolean programming,
      List<Template> lines,
      Optional<Entry> entry,
      Map<String, Action> keys) {
    return new Screen(
        name,
        programming,
        lines,
        programming ? Map.of(LAMPS, List.of(line(text("open")))) : Map.of(),
        entry,
        keys,
        Optional.empty(),
        Optional.empty());
  }

  private static Map<String, Screen> screens() {
    Map<String, Screen> screens = new LinkedHashMap<>();
    List<Screen> all =
        List.of(
            screen(
                "ready",
                false,
                List.of(line(text("Ready"))),
                Optional.empty(),
                Map.of("hold ok", Action.to("code"))),
            screen(
                "code",
                false,
                List.of(line(text("Code?")), line(new Template.TypedText(true, Optional.empty()))),
                Optional.of(
                    new Entry.Coded(
                        new Target.Check(named("code")),
                        "",
                        Action.to("top"),
                        Optional.empty(),
                        Optional.of(Action.to("ready")))),
                Map.of()),
            screen(
                "top",
                true,
                List.of(line(text("> "), new Template.UnderCursor())),
                Optional.of(
                    new Entry.Menu(
                        List.of(
                            new Entry.Item("Zones", Action.to("zone number")),
                            new Entry.Item("Delay", Action.to("delay")),
                            new Entry.Item("Account", Action.to("account")),
                            new Entry.Item("Save", leave("saving"))),
                        "down",
                        "up",
                        true,
                        "ok")),
                Map.of("back", leave("slamming"))),
            screen(
                "delay",
                true,
                List.of(
                    line(text("Delay")),
                    line(new Template.TypedText(false, Optional.of(named("delay"))))),
                Optional.of(
                    new Entry.Typed(
                        new Target.ToField(named("delay")),
                        1,
                        2,
                        false,
                        false,
                        "ok",
                        "back",
                        Action.to("top"),
                        Optional.of(Action.to("top")),
                        Optional.empty())),
                Map.of()),
            screen(
                "account",
                true,
                List.of(line(new Template.TypedText(false, Optional.of(named("account"))))),
                Optional.of(
                    new Entry.Typed(
                        new Target.Aside(),
                        4,
                        4,
                        true,
                        true,
                        "",
                        "back",
                        Action.to("account again"),
                        Optional.empty(),
                        Optional.empty())),
                Map.of("ok", Action.to("top"))),
            screen(
                "account again",
                true,
                List.of(line(text("Again "), new Template.TypedText(false, Optional.empty()))),
                Optional.of(
                    new Entry.Typed(
                        new Target.Repeat(named("account")),
                        4,
                        4,
                        true,
                        true,
                        "",
                        "back",
                        Action.to("top"),
                        Optional.empty(),
                        Optional.of(Action.to("account")))),
                Map.of("ok", Action.to("top"))),
            screen(
                "zone number",
                true,
                List.of(line(text("Zone? "), new Template.TypedText(false, Optional.empty()))),
                Optional.of(
                    new Entry.Typed(
                        new Target.ToRecord("zone"),
                        1,
                        1,
                        false,
                        true,
                        "",
                        "",
                        Action.to("kind"),
                        Optional.empty(),
                        Optional.empty())),
                Map.of("back", Action.to("top"))),
            screen(
                "kind",
                true,
                List.of(
                    line(text("Z"), new Template.RecordNumber("zone", 2), text(" is")),
                    line(value("zone.kind"))),
                Optional.of(
                    new Entry.Scroll(
                        named("zone.kind"),
                        "down",
                        "up",
                        false,
                        "ok",
                        new Action(
                            List.of(
                                new Action.Branch(
                                    new Condition.FieldIs(
                                        named("zone.kind"), List.of(new Value.Word("unused"))),
                                    List.of(),
                                    new Destination.ToScreen("zone number")),
                                new Action.Branch(
                                    Condition.ALWAYS,
                                    List.of(),
                                    new Destination.ToScreen("groups")))))),
                Map.of(
                    "back",
                    Action.to("zone number"),
                    "#",
                    new Action(
                        List.of(
                            new Action.Branch(
                                Condition.ALWAYS,
                                List.of(new Effect.MoveRecord("zone", Effect.Move.NEXT, false)),
                                new Destination.Stay()))))),
            screen(
                "groups",
                true,
                List.of(line(text("Groups "), value("zone.groups"))),
                Optional.of(
                    new Entry.ToggleByCode(named("zone.groups"), false, "ok", Action.to("name"))),
                Map.of("back", Action.to("kind"))),
            screen(
                "name",
                true,
                List.of(line(new Template.TypedText(false, Optional.of(named("zone.name"))))),
                Optional.of(
                    new Entry.Lettered(
                        named("zone.name"),
                        false,
                        "#",
                        "back",
                        "*",
                        "ok",
                        Action.to("after name"),
                        Optional.of(Action.to("after name")))),
                Map.of()),
            new Screen(
                "after name",
                true,
                List.of(),
                Map.of(),
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                Optional.of(
                    new Action(
                        List.of(
                            new Action.Branch(
                                new Condition.FieldIs(
                                    named("zone.kind"), List.of(new Value.Word("radio"))),
                                List.of(),
                                new Destination.ToScreen("listen")),
                            new Action.Branch(
                                Condition.ALWAYS,
                                List.of(new Effect.Keep()),
                                new Destination.ToScreen("zone number")))))),
            screen(
                "listen",
                true,
                List.of(line(text("Send now "), value("zone.unit"))),
                Optional.of(
                    new Entry.Hear(
                        named("zone.unit"),
                        Optional.of(named("zone.part")),
                        900,
                        1,
                        Action.to("zone number"),
                        Optional.of(Action.to("twice")),
                        Action.to("name"))),
                Map.of("ok", Action.to("zone number"))),
            screen(
                "twice",
                true,
                List.of(line(text("Known as Z"), new Template.OtherRecord())),
                Optional.empty(),
                Map.of("ok", Action.to("listen"), "back", Action.to("zone number"))));
    for (Screen screen : all) {
      screens.put(screen.name(), screen);
    }
    return screens;
  }
}
