package keenward.files.shape;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import keenward.files.QuotedText;
import keenward.files.yaml.YamlEntry;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;

/** A map of known fields. It has a name, and a section of its own on the reference page. */
public final class MapShape implements Shape<Fields> {

  private final String name;
  private final String meaning;
  private final String example;
  private final List<Field<?>> fields;
  private final Map<String, Field<?>> byName = new LinkedHashMap<>();

  private MapShape(String name, String meaning, String example, List<Field<?>> fields) {
    this.name = name;
    this.meaning = meaning;
    this.example = example;
    this.fields = List.copyOf(fields);
    for (Field<?> field : fields) {
      if (byName.put(field.name(), field) != null) {
        throw new IllegalArgumentException(name + " has two fields " + field.name());
      }
    }
  }

  /**
   * A map of these fields.
   *
   * @param name what such a map describes, such as "zone"; unique among the shapes of a format
   * @param meaning a sentence or more for the reference page
   */
  public static MapShape of(String name, String meaning, Field<?>... fields) {
    return new MapShape(name, meaning, "", List.of(fields));
  }

  /** The same shape with a YAML text that uses it, for the reference page. */
  public MapShape example(String yaml) {
    return new MapShape(name, meaning, yaml, fields);
  }

  /** What such a map describes. */
  public String name() {
    return name;
  }

  /** A sentence or more for the reference page. */
  public String meaning() {
    return meaning;
  }

  /** A YAML text that uses it; may be empty. */
  public String example() {
    return example;
  }

  /** Its fields in the order shown. */
  public List<Field<?>> fields() {
    return fields;
  }

  boolean has(Field<?> field) {
    return byName.get(field.name()) == field;
  }

  @Override
  public Optional<Fields> read(YamlNode node, ReadContext context) {
    if (!(node instanceof YamlMap map)) {
      return Mismatch.report(node, this, context);
    }
    Map<String, Object> values = new HashMap<>();
    for (YamlEntry entry : map.entries()) {
      Field<?> field = byName.get(entry.name());
      if (field == null) {
        reportUnknownField(entry, context);
      } else {
        field
            .shape()
            .read(entry.value(), context)
            .ifPresent(value -> values.put(field.name(), value));
      }
    }
    for (Field<?> field : fields) {
      if (field.required() && map.find(field.name()).isEmpty()) {
        context.structure(
            map.span(),
            "the " + name + " has no \"" + field.name() + '"',
            field.shape().expectation(),
            field.example().isEmpty()
                ? "add it"
                : "add for example " + field.name() + ": " + field.example());
      }
    }
    return Optional.of(new Fields(this, map, values));
  }

  private void reportUnknownField(YamlEntry entry, ReadContext context) {
    String question = NearestWord.question(entry.name(), byName.keySet());
    context.structure(
        entry.key().span(),
        "a " + name + " has no field " + QuotedText.of(entry.name()),
        "one of " + byName.keySet().stream().collect(Collectors.joining(", ")),
        question.isEmpty() ? "remove it, or move it to where it belongs" : question);
  }

  /**
   * The same shape with its fields turned into something else, which is done only when no required
   * one is missing.
   */
  @Override
  public <R> Shape<R> as(Function<Fields, R> function) {
    return new ConvertedShape<>(this, Fields::isComplete, function);
  }

  @Override
  public String expectation() {
    return "a map of fields of a " + name;
  }

  @Override
  public Set<NodeKind> kinds() {
    return Set.of(NodeKind.MAP);
  }
}
