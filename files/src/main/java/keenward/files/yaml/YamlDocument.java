package keenward.files.yaml;

import java.util.Optional;

/**
 * A file as a tree.
 *
 * @param file its name as given
 * @param text its characters; spans count in them
 */
public record YamlDocument(String file, String text, YamlNode root) {

  /** The node at a path, as {@link YamlPointer} writes it; the empty path is the root. */
  public Optional<YamlNode> find(String path) {
    Optional<YamlNode> node = Optional.of(root);
    for (String name : YamlPointer.names(path)) {
      node = node.flatMap(parent -> child(parent, name));
    }
    return node;
  }

  /** The place of a path: of its name where it has one, otherwise of its value. */
  public Optional<Span> place(String path) {
    int slash = path.lastIndexOf('/');
    if (slash >= 0 && find(path.substring(0, slash)).orElse(null) instanceof YamlMap map) {
      String name = YamlPointer.names(path.substring(slash)).getFirst();
      return map.entry(name).map(entry -> entry.key().span());
    }
    return find(path).map(YamlNode::span);
  }

  /** The place of the longest part of the path that exists; the root's in the last resort. */
  public Span nearestPlace(String path) {
    String shorter = path;
    while (!shorter.isEmpty()) {
      Optional<Span> place = place(shorter);
      if (place.isPresent()) {
        return place.get();
      }
      shorter = shorter.substring(0, shorter.lastIndexOf('/'));
    }
    return root.span();
  }

  private static Optional<YamlNode> child(YamlNode parent, String name) {
    return switch (parent) {
      case YamlMap map -> map.find(name);
      case YamlList list -> position(name, list.items().size()).map(list.items()::get);
      case YamlScalar scalar -> Optional.empty();
      case YamlRefused refused -> Optional.empty();
    };
  }

  private static Optional<Integer> position(String name, int size) {
    if (!name.matches("0|[1-9][0-9]{0,8}")) {
      return Optional.empty();
    }
    int position = Integer.parseInt(name);
    return position < size ? Optional.of(position) : Optional.empty();
  }
}
