package keenward.files.yaml;

/** A node of the tree that a YAML text stands for. */
public sealed interface YamlNode permits YamlMap, YamlList, YamlScalar, YamlRefused {

  /** Where the node stands. */
  Span span();

  /** Whether both nodes say the same, wherever they stand and however they are written. */
  static boolean sameContent(YamlNode one, YamlNode other) {
    return switch (one) {
      case YamlScalar scalar ->
          other instanceof YamlScalar second
              && scalar.text().equals(second.text())
              && scalar.isPlain() == second.isPlain();
      case YamlMap map -> other instanceof YamlMap second && sameEntries(map, second);
      case YamlList list -> other instanceof YamlList second && sameItems(list, second);
      case YamlRefused refused -> false;
    };
  }

  private static boolean sameEntries(YamlMap one, YamlMap other) {
    if (one.entries().size() != other.entries().size()) {
      return false;
    }
    for (int i = 0; i < one.entries().size(); i++) {
      YamlEntry first = one.entries().get(i);
      YamlEntry second = other.entries().get(i);
      if (!first.key().text().equals(second.key().text())
          || !sameContent(first.value(), second.value())) {
        return false;
      }
    }
    return true;
  }

  private static boolean sameItems(YamlList one, YamlList other) {
    if (one.items().size() != other.items().size()) {
      return false;
    }
    for (int i = 0; i < one.items().size(); i++) {
      if (!sameContent(one.items().get(i), other.items().get(i))) {
        return false;
      }
    }
    return true;
  }
}
