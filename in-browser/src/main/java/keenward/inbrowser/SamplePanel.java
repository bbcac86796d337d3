package keenward.inbrowser;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Capacity;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Manners;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Template;
import keenward.core.dialogue.description.Value;

/** A thought-up panel with two settings and one menu, small enough to be read at a glance. */
final class SamplePanel {

  static final String KEYPAD = "hall";

  private static final String NEXT = "next";
  private static final String TAKE = "take";
  private static final String LEAVE = "leave";

  private SamplePanel() {}

  static PanelDescription description() {
    Map<String, Screen> screens = new LinkedHashMap<>();
    for (Screen screen :
        List.of(
            resting(), askingForTheCode(), menu(), asking("entry-delay"), asking("sounder-time"))) {
      screens.put(screen.name(), screen);
    }
    return new PanelDescription(
        "Sample",
        "menu tree",
        List.of(
            new KeypadKind(KEYPAD, KeypadKind.Shows.TEXT, 2, 16, List.of(), 0, keys(), 3, true, 0)),
        new KeyMeanings(digits(), Map.of(), Map.of(), 10),
        new Capacity(
            Map.of(),
            Map.of(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            List.of(),
            OptionalInt.empty()),
        List.of(),
        List.of(
            field("engineer", new FieldType.Code(5, 5), new Value.Secret("engineer")),
            field("entry-delay", seconds(15, 45, 5), new Value.Whole(30)),
            field("sounder-time", seconds(60, 900, 60), new Value.Whole(300))),
        screens,
        List.of(),
        "resting",
        Map.of("kept", new Leaving("kept", Leaving.Saves.CONFIRMED, "resting", 0, false, true)),
        new Manners(
            false,
            Optional.of(new Leaving("idle", Leaving.Saves.NOTHING, "resting", 0, false, false)),
            1200,
            new Leaving("power lost", Leaving.Saves.NOTHING, "resting", 0, false, false),
            0,
            List.of()),
        List.of());
  }

  private static Screen resting() {
    return screen(
        "resting",
        false,
        List.of(line(text("All quiet"))),
        Optional.empty(),
        Map.of("take-leave", Action.to("code")));
  }

  private static Screen askingForTheCode() {
    return screen(
        "code",
        false,
        List.of(line(text("Who is there?")), line(typed(Optional.empty(), true))),
        Optional.of(
            new Entry.Coded(
                new Target.Check(new FieldReference.Named("engineer")),
                "",
                Action.to("menu"),
                Optional.empty(),
                Optional.of(Action.to("resting")))),
        Map.of());
  }

  private static Screen menu() {
    return screen(
        "menu",
        true,
        List.of(line(text("Settings")), line(new Template.UnderCursor())),
        Optional.of(
            new Entry.Menu(
                List.of(
                    new Entry.Item("Time to come in", Action.to("entry-delay")),
                    new Entry.Item("Sounder", Action.to("sounder-time"))),
                NEXT,
                "",
                true,
                TAKE)),
        Map.of(LEAVE, leave("kept")));
  }

  private static Screen asking(String field) {
    return screen(
        field,
        true,
        List.of(
            line(text("Seconds")),
            line(typed(Optional.of(new FieldReference.Named(field)), false))),
        Optional.of(
            new Entry.Typed(
                new Target.ToField(new FieldReference.Named(field)),
                2,
                3,
                false,
                false,
                TAKE,
                "",
                Action.to("menu"),
                Optional.of(Action.to("menu")),
                Optional.empty())),
        Map.of());
  }

  private static Screen screen(
      String name,
      boolean programming,
      List<Template> lines,
      Optional<Entry> entry,
      Map<String, Action> keys) {
    return new Screen(
        name, programming, lines, Map.of(), entry, keys, Optional.empty(), Optional.empty());
  }

  private static Template line(Template.Part... parts) {
    return new Template(List.of(parts));
  }

  private static Template.Part text(String text) {
    return new Template.Literal(text);
  }

  private static Template.Part typed(Optional<FieldReference> otherwise, boolean masked) {
    return new Template.TypedText(masked, otherwise);
  }

  private static Action leave(String way) {
    return new Action(
        List.of(new Action.Branch(Condition.ALWAYS, List.of(), new Destination.Leave(way))));
  }

  private static Field field(String name, FieldType type, Value initial) {
    return new Field(name, "", type, initial, List.of(), Condition.ALWAYS, false, Optional.empty());
  }

  private static FieldType seconds(int least, int most, int step) {
    return new FieldType.WholeNumber(least, most, step, "s", 1, 0, List.of());
  }

  private static Map<String, Integer> keys() {
    Map<String, Integer> keys = new LinkedHashMap<>();
    digits().keySet().forEach(digit -> keys.put(digit, 0));
    keys.put(NEXT, 0);
    keys.put(TAKE, 0);
    keys.put(LEAVE, 0);
    keys.put("take-leave", 15);
    return keys;
  }

  private static Map<String, String> digits() {
    Map<String, String> digits = new LinkedHashMap<>();
    for (int digit = 0; digit <= 9; digit++) {
      digits.put(Integer.toString(digit), Integer.toString(digit));
    }
    return digits;
  }
}
