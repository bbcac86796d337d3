package keenward.files.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Template;
import keenward.files.QuotedText;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.yaml.YamlPointer;

/** Turns screens into values. */
final class ScreenBinder {
  private final Vocabulary vocabulary;
  private final Faults faults;
  private final ActionBinder actions;
  private final EntryBinder entries;
  private final TemplateText templates;

  ScreenBinder(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
    this.actions = new ActionBinder(vocabulary, faults);
    this.entries = new EntryBinder(vocabulary, faults);
    this.templates = new TemplateText(vocabulary, faults);
  }

  Map<String, Screen> screens(Map<String, Fields> all) {
    Map<String, Screen> screens = new LinkedHashMap<>();
    all.forEach((name, fields) -> screens.put(name, screen(name, fields)));
    return screens;
  }

  private Screen screen(String name, Fields fields) {
    String pointer = YamlPointer.of("screens", name);
    if (List.of("stay", "location", "next location", "previous location").contains(name)
        || name.startsWith("leave")) {
      faults.add(
          pointer,
          QuotedText.of(name) + " as a screen's name",
          "a name that is no destination of its own",
          "rename it");
    }
    Optional<Entry> entry = entries.bind(pointer, fields);
    Map<String, Action> keys = new LinkedHashMap<>();
    fields
        .find(PanelDescriptionShape.SCREEN_KEYS)
        .ifPresent(given ->
            given.forEach((key, action) -> {
              String place = YamlPointer.child(pointer + "/keys", key);
              vocabulary.key(place, key);
              actions.bind(place, action).ifPresent(bound -> keys.put(key, bound));
            }));
    Optional<Action> decide =
        fields
            .find(PanelDescriptionShape.SCREEN_DECIDE)
            .flatMap(action -> actions.bind(pointer + "/decide", action));
    checkWhole(pointer, fields);
    return new Screen(
        name,
        fields.find(PanelDescriptionShape.SCREEN_PROGRAMMING).orElse(true),
        lines(pointer + "/shows", fields.list(PanelDescriptionShape.SCREEN_SHOWS)),
        elsewhere(pointer, fields),
        entry,
        keys,
        fields.find(PanelDescriptionShape.SCREEN_AFTER).flatMap(after -> after(pointer, after)),
        decide);
  }

  private void checkWhole(String pointer, Fields fields) {
    if (!fields.mentions(PanelDescriptionShape.SCREEN_DECIDE)) {
      if (!fields.mentions(PanelDescriptionShape.SCREEN_SHOWS)) {
        faults.add(
            pointer,
            "a screen that shows nothing",
            "shows: and its lines, or decide:",
            "add what it shows");
      }
      return;
    }
    List<Field<?>> others =
        List.of(
            PanelDescriptionShape.SCREEN_SHOWS,
            PanelDescriptionShape.SCREEN_ON,
            PanelDescriptionShape.SCREEN_KEYS,
            PanelDescriptionShape.SCREEN_AFTER,
            PanelDescriptionShape.SCREEN_DIGITS,
            PanelDescriptionShape.SCREEN_CODE,
            PanelDescriptionShape.SCREEN_SCROLL,
            PanelDescriptionShape.SCREEN_MENU,
            PanelDescriptionShape.SCREEN_SWITCH,
            PanelDescriptionShape.SCREEN_SWITCH_AT_CURSOR,
            PanelDescriptionShape.SCREEN_LETTERS,
            PanelDescriptionShape.SCREEN_WORD_NUMBER,
            PanelDescriptionShape.SCREEN_WORD_SCROLL,
            PanelDescriptionShape.SCREEN_HEAR);
    for (Field<?> other : others) {
      if (fields.mentions(other)) {
        faults.add(
            YamlPointer.child(pointer, other.name()),
            "a deciding screen with " + other.name(),
            "decide alone, since the screen is never seen",
            "move it to a screen that is seen");
      }
    }
  }

  private Map<String, List<Template>> elsewhere(String pointer, Fields fields) {
    Map<String, List<Template>> elsewhere = new LinkedHashMap<>();
    fields
        .find(PanelDescriptionShape.SCREEN_ON)
        .ifPresent(given ->
            given.forEach((keypad, texts) -> {
              String place = YamlPointer.child(pointer + "/on", keypad);
              vocabulary.keypad(place, keypad);
              elsewhere.put(keypad, lines(place, texts));
            }));
    return elsewhere;
  }

  private List<Template> lines(String pointer, List<String> texts) {
    List<Template> lines = new ArrayList<>();
    for (int index = 0; index < texts.size(); index++) {
      templates.parse(YamlPointer.child(pointer, index), texts.get(index)).ifPresent(lines::add);
    }
    return lines;
  }

  private Optional<Screen.Timed> after(String screen, Fields after) {
    String pointer = screen + "/after";
    Optional<Action> action =
        after
            .find(PanelDescriptionShape.AFTER_THEN)
            .flatMap(then -> actions.bind(pointer + "/then", then));
    Optional<Integer> tenths =
        after
            .find(PanelDescriptionShape.AFTER_WAIT)
            .map(wait -> Tenths.of(faults, pointer + "/wait", wait));
    if (tenths.isPresent() && tenths.get() == 0) {
      faults.add(
          pointer + "/wait",
          "waits no time at all",
          "a time such as 2 s",
          "use decide: on the screen");
      return Optional.empty();
    }
    return action.isPresent() && tenths.isPresent()
        ? Optional.of(new Screen.Timed(tenths.get(), action.get()))
        : Optional.empty();
  }
}
