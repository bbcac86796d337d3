package keenward.files.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The JSON Schema (draft 2020-12) of a shape. It accepts a file exactly when the reading finds no
 * fault of structure; what only the reading can find (names declared nowhere, figures out of range)
 * it lets pass. The file is taken as JSON the usual way: unquoted numbers are numbers, unquoted
 * {@code true}, {@code false} and {@code null} are themselves, everything else is text.
 */
public final class JsonSchema {

  private final Map<String, Object> definitions = new TreeMap<>();
  private final Map<String, MapShape> shapes = new TreeMap<>();

  private JsonSchema() {}

  /**
   * The schema as a text, the same for the same shape.
   *
   * @param id identity of the schema, a URI
   */
  public static String of(MapShape root, String id, String title) {
    JsonSchema schema = new JsonSchema();
    Map<String, Object> reference = schema.describe(root);
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    all.put("$id", id);
    all.put("title", title);
    all.putAll(reference);
    all.put("$defs", schema.definitions);
    return JsonText.of(all);
  }

  private Map<String, Object> describe(Shape<?> shape) {
    return switch (shape) {
      case TextShape text -> text(text);
      case WholeNumberShape number ->
          map("type", "integer", "minimum", number.least(), "maximum", number.most());
      case DecimalShape number ->
          map("type", "number", "minimum", number.least(), "maximum", number.most());
      case WordShape<?> word -> map("enum", List.copyOf(word.words().keySet()));
      case QuantityShape<?> quantity -> map("type", "string", "pattern", quantity.expression());
      case PatternShape<?> pattern -> pattern(pattern);
      case ReferenceShape<?> reference -> describe(reference.form());
      case UnknownOrShape<?> known ->
          anyOf(List.of(map("const", UnknownOrShape.WORD), describe(known.known())));
      case ConvertedShape<?, ?> converted -> describe(converted.inner());
      case ParsedShape<?, ?> parsed -> describe(parsed.inner());
      case EitherShape<?> either -> anyOf(either.shapes().stream().map(this::describe).toList());
      case ListShape<?> list -> list(list);
      case NamesShape<?, ?> names -> names(names);
      case LaterShape later -> defined(later.shape().get());
      case MapShape map -> defined(map);
    };
  }

  private static Map<String, Object> text(TextShape text) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", List.of("string", "number", "boolean"));
    schema.put("minLength", 1);
    schema.put("maxLength", text.most());
    schema.put("pattern", TextShape.VISIBLE);
    if (!text.severalLines()) {
      schema.put("not", map("type", "string", "pattern", "\\n"));
    }
    return schema;
  }

  private static Map<String, Object> pattern(PatternShape<?> pattern) {
    Map<String, Object> schema = map("type", "string", "pattern", pattern.expression());
    pattern.format().ifPresent(format -> schema.put("format", format));
    return schema;
  }

  private Map<String, Object> list(ListShape<?> list) {
    Map<String, Object> schema = map("type", "array", "items", describe(list.item()));
    if (list.least() > 0) {
      schema.put("minItems", list.least());
    }
    if (list.most() < Integer.MAX_VALUE) {
      schema.put("maxItems", list.most());
    }
    if (list.distinct()) {
      schema.put("uniqueItems", true);
    }
    return schema;
  }

  private Map<String, Object> names(NamesShape<?, ?> names) {
    Map<String, Object> name = map("pattern", names.key().expression());
    if (!names.key().refused().isEmpty()) {
      name.put("not", map("enum", List.copyOf(names.key().refused())));
    }
    return map(
        "type", "object", "propertyNames", name, "additionalProperties", describe(names.value()));
  }

  private Map<String, Object> defined(MapShape shape) {
    String key = shape.name().replace(' ', '-');
    MapShape known = shapes.putIfAbsent(key, shape);
    if (known != null && known != shape) {
      throw new IllegalArgumentException("two shapes of the name " + shape.name());
    }
    if (known == null) {
      definitions.put(key, object(shape));
    }
    return map("$ref", "#/$defs/" + key);
  }

  private Map<String, Object> object(MapShape shape) {
    Map<String, Object> properties = new LinkedHashMap<>();
    List<String> required = new ArrayList<>();
    for (Field<?> field : shape.fields()) {
      Map<String, Object> described = new LinkedHashMap<>();
      described.put("description", field.meaning());
      described.putAll(describe(field.shape()));
      properties.put(field.name(), described);
      if (field.required()) {
        required.add(field.name());
      }
    }
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("description", shape.meaning());
    schema.put("type", "object");
    schema.put("properties", properties);
    if (!required.isEmpty()) {
      schema.put("required", required);
    }
    schema.put("additionalProperties", false);
    return schema;
  }

  private static Map<String, Object> anyOf(List<Map<String, Object>> schemas) {
    return map("anyOf", schemas);
  }

  private static Map<String, Object> map(Object... namesAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      map.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return map;
  }
}
