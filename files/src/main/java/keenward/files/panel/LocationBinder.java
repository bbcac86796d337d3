package keenward.files.panel;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.RecordKind;
import keenward.files.panel.PanelDescriptionShape.Range;
import keenward.files.shape.Fields;
import keenward.files.yaml.YamlPointer;

/** Turns numbered locations into values. */
final class LocationBinder {
  private final Vocabulary vocabulary;
  private final Faults faults;

  LocationBinder(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
  }

  List<Location> locations(List<Fields> all) {
    Map<Integer, Location> byNumber = new TreeMap<>();
    for (int index = 0; index < all.size(); index++) {
      if (all.get(index).isComplete()) {
        add(YamlPointer.child("/locations", index), all.get(index), byNumber);
      }
    }
    return List.copyOf(byNumber.values());
  }

  private void add(String pointer, Fields fields, Map<Integer, Location> byNumber) {
    Optional<String> field =
        vocabulary.field(pointer + "/field", fields.get(PanelDescriptionShape.LOCATION_FIELD));
    if (field.isEmpty()) {
      return;
    }
    Range numbers = fields.get(PanelDescriptionShape.LOCATION_NUMBERS);
    int every = fields.find(PanelDescriptionShape.LOCATION_EVERY).orElse(1);
    RecordKind kind = vocabulary.records().get(vocabulary.recordOf(field.get()));
    int count = (numbers.most() - numbers.least()) / every + 1;
    int first =
        fields.find(PanelDescriptionShape.LOCATION_FIRST).orElse(kind == null ? 0 : kind.first());
    if (kind == null ? count != 1 : !kind.contains(first) || !kind.contains(first + count - 1)) {
      faults.add(
          pointer + "/numbers",
          count + " locations for " + field.get(),
          kind == null
              ? "one, since there is one such field"
              : "at most the records " + kind.first() + " to " + kind.last(),
          "mend the numbers, or the first record");
      return;
    }
    for (int index = 0; index < count; index++) {
      int number = numbers.least() + index * every;
      Location location =
          new Location(
              number,
              field.get(),
              kind == null ? 0 : first + index,
              fields.get(PanelDescriptionShape.LOCATION_SCREEN));
      if (byNumber.putIfAbsent(number, location) != null) {
        faults.add(
            pointer + "/numbers",
            "location " + number + " is there already",
            "each number once",
            "mend the numbers");
        return;
      }
    }
  }
}
