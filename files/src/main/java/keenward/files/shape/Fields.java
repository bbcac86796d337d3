package keenward.files.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.plan.Fact;
import keenward.files.yaml.Span;
import keenward.files.yaml.YamlEntry;
import keenward.files.yaml.YamlMap;

/** The values of a map as far as they could be read. */
public final class Fields {

  private final MapShape shape;
  private final YamlMap map;
  private final Map<String, Object> values;

  Fields(MapShape shape, YamlMap map, Map<String, Object> values) {
    this.shape = shape;
    this.map = map;
    this.values = values;
  }

  /** The value, when it is given and right. */
  public <T> Optional<T> find(Field<T> field) {
    if (!shape.has(field)) {
      throw new IllegalArgumentException(shape.name() + " has no field " + field.name());
    }
    // Put there by this field's own shape, whose value is a T.
    @SuppressWarnings("unchecked")
    T value = (T) values.get(field.name());
    return Optional.ofNullable(value);
  }

  /**
   * The value of a field that is known to be there.
   *
   * @throws IllegalStateException when it is not; see {@link #isComplete}
   */
  public <T> T get(Field<T> field) {
    return find(field)
        .orElseThrow(() -> new IllegalStateException(shape.name() + " without " + field.name()));
  }

  /** The fact: given, unknown, or missing when the map does not mention it. */
  public <T> Fact<T> fact(Field<Fact<T>> field) {
    return find(field).orElseGet(Fact::missing);
  }

  /** A value that is given whenever the file mentions it. */
  public <T> Fact<T> given(Field<T> field) {
    return find(field).map(Fact::of).orElseGet(Fact::missing);
  }

  /** The list, empty when the map does not mention it. */
  public <T> List<T> list(Field<List<T>> field) {
    return find(field).orElseGet(List::of);
  }

  /** Whether the file mentions the field, rightly or not. */
  public boolean mentions(Field<?> field) {
    return map.find(field.name()).isPresent();
  }

  /** Whether every required field could be read. */
  public boolean isComplete() {
    return shape.fields().stream()
        .allMatch(field -> !field.required() || values.containsKey(field.name()));
  }

  /** The place of the map. */
  public Span place() {
    return map.span();
  }

  /** The place of a field's value; the map's when the field is not mentioned. */
  public Span place(Field<?> field) {
    return map.entry(field.name())
        .map(YamlEntry::value)
        .map(value -> value.span())
        .orElseGet(map::span);
  }
}
