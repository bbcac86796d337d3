package keenward.files.panel;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.MemoryLayout;
import keenward.core.quantities.Parsed;
import keenward.files.Problem;
import keenward.files.QuotedText;
import keenward.files.shape.Fields;
import keenward.files.shape.ShapeReader;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlPointer;
import keenward.files.yaml.YamlReader;
import keenward.files.yaml.YamlReading;

/** Reads what a panel was found to hold. */
public final class FoundMemoryReader {
  private static final String UNKNOWN = "unknown";

  private final MemoryLayout layout;
  private final PanelDescription description;
  private final Faults faults;
  private Memory memory;

  private FoundMemoryReader(PanelDescription description, Faults faults, Memory otherwise) {
    this.description = description;
    this.layout = new MemoryLayout(description);
    this.faults = faults;
    this.memory = otherwise;
  }

  /**
   * Reads a file's bytes against the description of the panel; reports everything wrong in one go.
   */
  public static FoundReading read(String fileName, byte[] bytes, PanelDescription description) {
    YamlReading yaml = YamlReader.read(fileName, bytes);
    if (yaml.document().isEmpty()) {
      return new FoundReading(Optional.empty(), yaml.problems());
    }
    YamlDocument document = yaml.document().get();
    ShapeReader.Result<Fields> result = ShapeReader.read(document, FoundMemoryShape.ROOT);
    Faults faults = new Faults(document, result.context());
    Optional<Memory> memory = result.value().map(root -> bind(root, description, faults));
    List<Problem> problems = result.context().problemsAfter(yaml.problems());
    return new FoundReading(problems.isEmpty() ? memory : Optional.empty(), problems);
  }

  private static Memory bind(Fields root, PanelDescription description, Faults faults) {
    String panel = root.find(FoundMemoryShape.PANEL).orElse(description.panel());
    MemoryLayout layout = new MemoryLayout(description);
    if (!panel.equals(description.panel())) {
      faults.add(
          "/panel",
          "the memory of a " + QuotedText.of(panel),
          "the memory of a " + QuotedText.of(description.panel()),
          "name the file of this panel, or order for that one");
      return layout.unknown();
    }
    boolean defaults = root.find(FoundMemoryShape.OTHERWISE).orElse(false);
    FoundMemoryReader reader =
        new FoundMemoryReader(description, faults, defaults ? layout.initial() : layout.unknown());
    root.find(FoundMemoryShape.ONCE).ifPresent(fields -> reader.fields("/once", "", 0, fields));
    root.find(FoundMemoryShape.RECORDS).ifPresent(reader::records);
    return reader.memory;
  }

  private void records(Map<String, Map<String, Map<String, String>>> records) {
    records.forEach((name, numbers) -> {
      String pointer = YamlPointer.of("records", name);
      Optional<RecordKind> kind = description.findRecord(name);
      if (kind.isEmpty()) {
        faults.unknown(
            pointer,
            "kind of record",
            name,
            description.records().stream().map(RecordKind::name).toList());
        return;
      }
      numbers.forEach((text, fields) -> {
        String place = YamlPointer.child(pointer, text);
        int number = WholeNumbers.parse(text);
        if (!kind.get().contains(number)) {
          faults.add(
              place,
              "there is no " + name + " " + QuotedText.of(text),
              kind.get().first() + " to " + kind.get().last(),
              "write a number that is there");
          return;
        }
        fields(place, name, number, fields);
      });
    });
  }

  private void fields(String pointer, String record, int number, Map<String, String> fields) {
    fields.forEach((name, text) -> {
      String place = YamlPointer.child(pointer, name);
      Optional<keenward.core.dialogue.description.Field> field =
          description.fields().stream()
              .filter(each -> each.record().equals(record) && each.localName().equals(name))
              .findFirst();
      if (field.isEmpty()) {
        faults.unknown(
            place,
            record.isEmpty() ? "field that there is once" : "field of a " + record,
            name,
            description.fields().stream()
                .filter(each -> each.record().equals(record))
                .map(keenward.core.dialogue.description.Field::localName)
                .toList());
        return;
      }
      value(place, field.get().type(), text)
          .ifPresent(value -> memory = memory.with(layout.slot(field.get().name(), number), value));
    });
  }

  private Optional<Value> value(String pointer, FieldType type, String text) {
    if (text.equals(UNKNOWN)) {
      return Optional.of(Value.unknown());
    }
    Parsed<Value> value = ValueText.parse(type, text);
    if (value.value() == null) {
      faults.add(
          pointer,
          "the field cannot hold " + QuotedText.of(text),
          ValueText.expectation(type) + ", or unknown",
          "look again what the panel shows");
    }
    return value.find();
  }
}
