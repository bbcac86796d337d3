package keenward.files.shape;

import java.util.Optional;
import keenward.files.QuotedText;
import keenward.files.yaml.YamlList;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlRefused;
import keenward.files.yaml.YamlScalar;

/** Words for a node that is not what its shape expects. */
final class Mismatch {

  private Mismatch() {}

  /** Reports the node and returns nothing; in silence where the text's reader has reported it. */
  static <T> Optional<T> report(YamlNode node, Shape<?> shape, ReadContext context) {
    return report(node, shape, "", context);
  }

  /** Reports the node with a remedy and returns nothing. */
  static <T> Optional<T> report(YamlNode node, Shape<?> shape, String remedy, ReadContext context) {
    switch (node) {
      case YamlRefused refused -> {}
      case YamlScalar scalar when scalar.isEmpty() ->
          context.structure(
              node.span(),
              "nothing is given",
              shape.expectation(),
              "write the value, or remove the line");
      default -> context.structure(node.span(), describe(node), shape.expectation(), remedy);
    }
    return Optional.empty();
  }

  static String describe(YamlNode node) {
    return switch (node) {
      case YamlScalar scalar -> QuotedText.of(scalar.text());
      case YamlMap map -> "a map";
      case YamlList list -> "a list";
      case YamlRefused refused -> "something refused";
    };
  }
}
