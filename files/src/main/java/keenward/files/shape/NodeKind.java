package keenward.files.shape;

import keenward.files.yaml.YamlList;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlRefused;
import keenward.files.yaml.YamlScalar;

/** The kinds of node that shapes tell apart. */
public enum NodeKind {
  /** A single value. */
  SCALAR,
  /** Names with values. */
  MAP,
  /** Values in order. */
  LIST;

  /** The kind of a node; a refused node counts as a single value. */
  static NodeKind of(YamlNode node) {
    return switch (node) {
      case YamlMap map -> MAP;
      case YamlList list -> LIST;
      case YamlScalar scalar -> SCALAR;
      case YamlRefused refused -> SCALAR;
    };
  }
}
