package keenward.files.panel;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.Manners;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Screen;
import keenward.files.QuotedText;
import keenward.files.shape.Fields;
import keenward.files.yaml.YamlPointer;

/** Puts a description together from what was read by shape. */
final class PanelBinder {
  private static final int MOST_VALUES = 50_000;

  private final Faults faults;

  PanelBinder(Faults faults) {
    this.faults = faults;
  }

  /** The description; of use only when nothing was found wrong. */
  Optional<PanelDescription> bind(Fields root) {
    Vocabulary vocabulary = new Vocabulary(faults);
    KeypadBinder keypadBinder = new KeypadBinder(vocabulary, faults);
    List<KeypadKind> keypads =
        keypadBinder.keypads(root.find(PanelDescriptionShape.KEYPADS).orElse(Map.of()));
    KeyMeanings typing = keypadBinder.typing(root.find(PanelDescriptionShape.TYPING_PART));
    MemoryBinder memoryBinder = new MemoryBinder(vocabulary, faults);
    List<RecordKind> records =
        memoryBinder.records(root.find(PanelDescriptionShape.RECORDS).orElse(Map.of()));
    Map<String, Map<String, Fields>> memory =
        root.find(PanelDescriptionShape.MEMORY).orElse(Map.of());
    memoryBinder.types(memory);
    List<Field> fields = memoryBinder.fields(memory);
    Map<String, Screen> screens =
        new ScreenBinder(vocabulary, faults)
            .screens(root.find(PanelDescriptionShape.SCREENS).orElse(Map.of()));
    List<Location> locations =
        new LocationBinder(vocabulary, faults)
            .locations(root.list(PanelDescriptionShape.LOCATIONS));
    LeavingBinder leavingBinder = new LeavingBinder(faults);
    Map<String, Leaving> leaving =
        leavingBinder.leaving(root.find(PanelDescriptionShape.LEAVING_PART).orElse(Map.of()));
    Optional<Manners> manners = leavingBinder.manners(root);
    checkOutside(root, screens, leaving);
    checkSize(records, fields);
    if (!root.isComplete() || manners.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PanelDescription(
            root.get(PanelDescriptionShape.PANEL),
            root.get(PanelDescriptionShape.FAMILY),
            keypads,
            typing,
            CapacityBinder.bind(root.find(PanelDescriptionShape.CAPACITY_PART)),
            records,
            fields,
            screens,
            locations,
            root.get(PanelDescriptionShape.START),
            leaving,
            manners.get(),
            root.list(PanelDescriptionShape.RECOVERY)));
  }

  private void checkSize(List<RecordKind> records, List<Field> fields) {
    long slots = 0;
    for (Field field : fields) {
      slots +=
          records.stream()
              .filter(kind -> kind.name().equals(field.record()))
              .mapToInt(RecordKind::size)
              .findFirst()
              .orElse(1);
    }
    if (slots > MOST_VALUES) {
      faults.add(
          "/memory",
          "a memory of " + slots + " values",
          "at most " + MOST_VALUES,
          "mend the numbers of the records");
    }
  }

  /** Where nobody programs, and where leaving leads, programming is not open. */
  private void checkOutside(
      Fields root, Map<String, Screen> screens, Map<String, Leaving> leaving) {
    root.find(PanelDescriptionShape.START)
        .ifPresent(start -> checkOutside("/start", start, screens));
    leaving.forEach((name, way) ->
        checkOutside(YamlPointer.of("leaving", name, "goes"), way.goesTo(), screens));
    root.find(PanelDescriptionShape.IDLE_PART)
        .flatMap(idle -> idle.find(PanelDescriptionShape.GOES))
        .ifPresent(goes -> checkOutside("/idle/goes", goes, screens));
  }

  private void checkOutside(String pointer, String name, Map<String, Screen> screens) {
    Screen screen = screens.get(name);
    if (screen != null && (screen.programming() || screen.decide().isPresent())) {
      faults.add(
          pointer,
          "programming is open on the screen " + QuotedText.of(name),
          "a screen with programming: no",
          "say programming: no there, or name another");
    }
  }
}
