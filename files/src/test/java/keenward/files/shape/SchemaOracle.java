package keenward.files.shape;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import keenward.files.yaml.YamlEntry;
import keenward.files.yaml.YamlList;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlRefused;
import keenward.files.yaml.YamlScalar;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Judges a tree by a JSON Schema with an independent validator (networknt), formats asserted. */
public final class SchemaOracle {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final Schema schema;

  /** An oracle for a schema. */
  public SchemaOracle(String schemaText) {
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(schemaText, InputFormat.JSON);
  }

  /** What the validator finds wrong with the tree; empty when it accepts. */
  public List<Error> errors(YamlNode root) {
    return schema.validate(
        json(root),
        context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
  }

  /** The tree as JSON, as an editor would see it. */
  public static JsonNode json(YamlNode node) {
    return switch (node) {
      case YamlMap map -> {
        ObjectNode object = JSON.objectNode();
        for (YamlEntry entry : map.entries()) {
          object.set(entry.name(), json(entry.value()));
        }
        yield object;
      }
      case YamlList list -> {
        ArrayNode array = JSON.arrayNode();
        list.items().forEach(item -> array.add(json(item)));
        yield array;
      }
      case YamlScalar scalar -> json(scalar);
      case YamlRefused refused -> throw new IllegalArgumentException("refused by the reader");
    };
  }

  private static JsonNode json(YamlScalar scalar) {
    if (scalar.isEmpty()) {
      return JSON.nullNode();
    }
    if (scalar.isPlain() && (scalar.text().equals("true") || scalar.text().equals("false"))) {
      return JSON.booleanNode(Boolean.parseBoolean(scalar.text()));
    }
    return PlainNumber.of(scalar)
        .<JsonNode>map(JSON::numberNode)
        .orElseGet(() -> JSON.stringNode(scalar.text()));
  }
}
