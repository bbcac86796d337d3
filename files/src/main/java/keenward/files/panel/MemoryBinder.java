package keenward.files.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.PlanRecords;
import keenward.core.dialogue.description.PlanSource;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.planned.PlanFact;
import keenward.core.dialogue.planned.PlanFacts;
import keenward.core.quantities.Parsed;
import keenward.files.QuotedText;
import keenward.files.shape.Fields;
import keenward.files.yaml.YamlPointer;

/** Turns records and the memory's fields into values. */
final class MemoryBinder {
  private final Vocabulary vocabulary;
  private final Faults faults;

  MemoryBinder(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
  }

  List<RecordKind> records(Map<String, Fields> all) {
    List<RecordKind> kinds = new ArrayList<>();
    all.forEach((name, fields) ->
        fields
            .find(PanelDescriptionShape.RECORD_NUMBERS)
            .ifPresent(range -> {
              String pointer = YamlPointer.of("records", name);
              if (range.most() - range.least() >= 10_000) {
                faults.add(
                    pointer,
                    name + " has " + (range.most() - range.least() + 1L) + " records",
                    "at most 10000",
                    "mend the range");
                return;
              }
              RecordKind kind =
                  new RecordKind(
                      name,
                      range.least(),
                      range.most(),
                      fields.find(PanelDescriptionShape.RECORD_FROM));
              kinds.add(kind);
              vocabulary.learn(kind);
            }));
    return kinds;
  }

  /** First pass: the types, so that conditions and effects can be read in the second. */
  void types(Map<String, Map<String, Fields>> memory) {
    TypeBinder binder = new TypeBinder(faults);
    memory.forEach((record, fields) -> {
      if (!record.equals(Vocabulary.PANEL)) {
        vocabulary.checkDeclared(YamlPointer.of("memory", record), record);
      }
      fields.forEach((name, field) ->
          binder
              .bind(YamlPointer.of("memory", record, name), field)
              .ifPresent(type -> vocabulary.learn(Vocabulary.fullName(record, name), type)));
    });
  }

  /** Second pass: the fields themselves. */
  List<Field> fields(Map<String, Map<String, Fields>> memory) {
    List<Field> all = new ArrayList<>();
    memory.forEach((record, fields) ->
        fields.forEach((name, field) -> field(record, name, field).ifPresent(all::add)));
    return all;
  }

  private Optional<Field> field(String record, String name, Fields fields) {
    String pointer = YamlPointer.of("memory", record, name);
    String full = Vocabulary.fullName(record, name);
    checkName(pointer, record, name);
    Optional<FieldType> type = vocabulary.type(full);
    if (type.isEmpty()) {
      return Optional.empty();
    }
    Optional<Value> initial = initial(pointer, full, type.get(), fields);
    Optional<List<Effect>> onChange =
        new ActionBinder(vocabulary, faults)
            .effects(pointer + "/on change", fields.list(PanelDescriptionShape.FIELD_ON_CHANGE));
    Optional<Condition> onlyWhen =
        fields
            .find(PanelDescriptionShape.FIELD_ONLY_WHEN)
            .map(when -> onlyWhen(pointer + "/only when", when))
            .orElse(Optional.of(Condition.ALWAYS));
    Optional<PlanSource> from =
        fields
            .find(PanelDescriptionShape.FIELD_FROM)
            .flatMap(source -> source(pointer + "/from", record, type.get(), source, fields));
    if (initial.isEmpty() || onChange.isEmpty() || onlyWhen.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Field(
            full,
            record.equals(Vocabulary.PANEL) ? "" : record,
            type.get(),
            initial.get(),
            onChange.get(),
            onlyWhen.get(),
            fields.find(PanelDescriptionShape.FIELD_WRITE_ONLY).orElse(false),
            from));
  }

  private void checkName(String pointer, String record, String name) {
    boolean reserved =
        List.of(Vocabulary.VALUE, "typed", "cursor", "known", "location", "keypad", "locked")
            .contains(name);
    if (record.equals(Vocabulary.PANEL) && (reserved || vocabulary.isRecord(name))) {
      faults.add(
          pointer,
          QuotedText.of(name) + " as a field's name",
          "a name that is neither a kind of record nor a word of the small languages",
          "rename it");
    }
    for (String forbidden : List.of("=", "|", "{", "}", ":", ",", "!")) {
      if (name.contains(forbidden)) {
        faults.add(
            pointer,
            QuotedText.of(name) + " as a field's name",
            "a name without " + forbidden,
            "rename it");
      }
    }
  }

  private Optional<Value> initial(String pointer, String full, FieldType type, Fields fields) {
    Optional<String> written = fields.find(PanelDescriptionShape.FIELD_DEFAULT);
    if (written.isPresent()) {
      Parsed<Value> value = ValueText.parse(type, written.get());
      if (value.value() == null) {
        faults.add(
            pointer + "/default",
            full + " cannot hold " + QuotedText.of(written.get()),
            ValueText.expectation(type),
            "write a value of the field");
      }
      return value.find();
    }
    return switch (type) {
      case FieldType.OptionSet set -> Optional.of(new Value.Members(0));
      case FieldType.FreeText text -> Optional.of(new Value.Text(""));
      case FieldType.WordSequence words -> Optional.of(new Value.Words(List.of()));
      case FieldType.WholeNumber number -> noDefault(pointer, full, type);
      case FieldType.Choice choice -> noDefault(pointer, full, type);
      default -> Optional.of(Value.nothing());
    };
  }

  private Optional<Value> noDefault(String pointer, String full, FieldType type) {
    faults.add(
        pointer,
        full + " has no default",
        "what a new panel holds: " + ValueText.expectation(type),
        "add default: and the value");
    return Optional.empty();
  }

  private Optional<Condition> onlyWhen(String pointer, String text) {
    Optional<Condition> condition = new ConditionText(vocabulary, faults).parse(pointer, text);
    if (condition.isPresent() && !onFieldsOnly(condition.get())) {
      faults.add(
          pointer,
          "a condition on more than fields",
          "conditions on fields of the memory",
          "leave the rest to the screens");
      return Optional.empty();
    }
    return condition;
  }

  private static boolean onFieldsOnly(Condition condition) {
    return switch (condition) {
      case Condition.FieldIs is -> true;
      case Condition.Not not -> onFieldsOnly(not.condition());
      case Condition.All all -> all.conditions().stream().allMatch(MemoryBinder::onFieldsOnly);
      case Condition.Any any -> any.conditions().stream().allMatch(MemoryBinder::onFieldsOnly);
      default -> false;
    };
  }

  private Optional<PlanSource> source(
      String pointer, String record, FieldType type, Object source, Fields fields) {
    if (source instanceof String path) {
      return fact(pointer, record, path)
          .map(fact ->
              new PlanSource.OneFact(
                  fact.path(),
                  fields.find(PanelDescriptionShape.FIELD_WORDS).orElse(Map.of()),
                  fields.find(PanelDescriptionShape.FIELD_SHORTEN).orElse(false)));
    }
    if (!(type instanceof FieldType.OptionSet set)) {
      faults.add(
          pointer,
          "several facts for one field",
          "one fact, unless the field is a set",
          "keep one");
      return Optional.empty();
    }
    Map<String, String> paths = new LinkedHashMap<>();
    List<String> words = set.options().stream().map(FieldType.Option::word).toList();
    if (source instanceof Map<?, ?> named) {
      named.forEach((option, path) -> {
        String place = YamlPointer.child(pointer, option.toString());
        if (!words.contains(option.toString())) {
          faults.unknown(place, "option", option.toString(), words);
        }
        Optional<PlanFact> fact = fact(place, record, path.toString());
        if (fact.isPresent() && fact.get().kind() != PlanFact.Kind.YES_NO) {
          faults.add(
              place,
              fact.get().path() + " is no yes or no",
              "a yes-or-no fact for an option",
              "give it a field of its own");
        }
        fact.ifPresent(found -> paths.put(option.toString(), found.path()));
      });
    }
    return Optional.of(new PlanSource.FactByOption(paths));
  }

  private Optional<PlanFact> fact(String pointer, String record, String path) {
    Optional<PlanFact> fact = PlanFacts.find(path);
    if (fact.isEmpty()) {
      faults.unknown(
          pointer, "fact of a plan", path, PlanFacts.ALL.stream().map(PlanFact::path).toList());
      return Optional.empty();
    }
    RecordKind kind = vocabulary.records().get(record);
    if (kind == null && !record.equals(Vocabulary.PANEL)) {
      return fact;
    }
    Optional<PlanRecords> stands = kind == null ? Optional.empty() : kind.from();
    if (!fact.get().records().equals(stands)) {
      faults.add(
          pointer,
          fact.get().path()
              + fact.get()
                  .records()
                  .map(each -> " is stated for each of the " + each.word())
                  .orElse(" is stated once"),
          stands.map(each -> "a fact of " + each.word()).orElse("a fact of the whole system"),
          "take another fact, or say from: at the kind of record");
      return Optional.empty();
    }
    return fact;
  }
}
