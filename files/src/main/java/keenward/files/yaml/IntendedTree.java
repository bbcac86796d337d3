package keenward.files.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The tree that a file has to have after an edit. */
final class IntendedTree {

  private IntendedTree() {}

  static YamlNode after(YamlDocument document, Edit edit) {
    return switch (edit) {
      case Edit.SetValue set -> {
        require(document, set.path());
        yield at(document.root(), YamlPointer.names(set.path()), node -> set.value().tree());
      }
      case Edit.InsertEntry insert -> {
        YamlMap map = map(document, insert.map());
        requireFree(map, insert.map(), insert.name());
        insert.after().ifPresent(name -> require(document, YamlPointer.child(insert.map(), name)));
        yield at(document.root(), YamlPointer.names(insert.map()), node -> inserted(map, insert));
      }
      case Edit.RemoveEntry remove -> {
        YamlEntry gone = entry(document, remove.path());
        YamlMap map = map(document, parent(remove.path()));
        yield at(
            document.root(), YamlPointer.names(parent(remove.path())), node -> without(map, gone));
      }
      case Edit.RenameKey rename -> {
        YamlEntry old = entry(document, rename.path());
        YamlMap map = map(document, parent(rename.path()));
        if (!old.name().equals(rename.name())) {
          requireFree(map, rename.path(), rename.name());
        }
        yield at(
            document.root(),
            YamlPointer.names(parent(rename.path())),
            node -> renamed(map, old, rename.name()));
      }
    };
  }

  static String parent(String path) {
    return path.substring(0, path.lastIndexOf('/'));
  }

  static YamlMap map(YamlDocument document, String path) {
    if (require(document, path) instanceof YamlMap map) {
      return map;
    }
    throw new EditRefusal(path, "no map is here", "names with values");
  }

  static YamlEntry entry(YamlDocument document, String path) {
    require(document, path);
    if (path.isEmpty()) {
      throw new EditRefusal(path, "the whole file has no name", "the path of a name");
    }
    List<String> names = YamlPointer.names(path);
    return map(document, parent(path))
        .entry(names.getLast())
        .orElseThrow(() -> new EditRefusal(path, "nothing is here", "a path of the file"));
  }

  private static YamlNode require(YamlDocument document, String path) {
    return document
        .find(path)
        .orElseThrow(() -> new EditRefusal(path, "nothing is here", "a path of the file"));
  }

  private static void requireFree(YamlMap map, String path, String name) {
    if (map.find(name).isPresent()) {
      throw new EditRefusal(path, "the name is taken", "a name that is not there yet");
    }
  }

  private static YamlNode at(YamlNode node, List<String> path, UnaryOperator<YamlNode> change) {
    if (path.isEmpty()) {
      return change.apply(node);
    }
    List<String> rest = path.subList(1, path.size());
    return switch (node) {
      case YamlMap map ->
          map(
              map,
              map.entries().stream()
                  .map(entry ->
                      entry.name().equals(path.getFirst())
                          ? new YamlEntry(entry.key(), at(entry.value(), rest, change))
                          : entry)
                  .toList());
      case YamlList list -> {
        List<YamlNode> items = new ArrayList<>(list.items());
        int index = Integer.parseInt(path.getFirst());
        items.set(index, at(items.get(index), rest, change));
        yield new YamlList(items, list.flow(), list.span());
      }
      case YamlScalar scalar -> scalar;
      case YamlRefused refused -> refused;
    };
  }

  private static YamlMap map(YamlMap like, List<YamlEntry> entries) {
    return new YamlMap(entries, like.isFlow(), like.span());
  }

  private static YamlNode inserted(YamlMap map, Edit.InsertEntry insert) {
    List<YamlEntry> entries = new ArrayList<>(map.entries());
    int index =
        insert
            .after()
            .flatMap(map::entry)
            .map(entry -> entries.indexOf(entry) + 1)
            .orElse(entries.size());
    entries.add(index, new YamlEntry(key(insert.name()), insert.value().tree()));
    return map(map, entries);
  }

  private static YamlNode without(YamlMap map, YamlEntry gone) {
    return map(map, map.entries().stream().filter(entry -> !entry.equals(gone)).toList());
  }

  private static YamlNode renamed(YamlMap map, YamlEntry old, String name) {
    return map(
        map,
        map.entries().stream()
            .map(entry -> entry.equals(old) ? new YamlEntry(key(name), entry.value()) : entry)
            .toList());
  }

  private static YamlScalar key(String name) {
    return new YamlScalar(name, YamlScalar.Style.PLAIN, Span.NOWHERE);
  }

  /** The entry before this one in its map. */
  static Optional<YamlEntry> before(YamlMap map, YamlEntry entry) {
    int index = map.entries().indexOf(entry);
    return index > 0 ? Optional.of(map.entries().get(index - 1)) : Optional.empty();
  }
}
