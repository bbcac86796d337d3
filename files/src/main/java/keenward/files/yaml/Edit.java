package keenward.files.yaml;

import java.util.Optional;

/** A change of a file at one place. Paths are those of {@link YamlPointer}. */
public sealed interface Edit {

  /** Replaces the value at a path; comments inside the old value go with it. */
  record SetValue(String path, NewValue value) implements Edit {}

  /**
   * Adds a name to a map.
   *
   * @param map path of the map
   * @param after name after which it goes; empty puts it last
   * @param name the new name
   */
  record InsertEntry(String map, Optional<String> after, String name, NewValue value)
      implements Edit {}

  /**
   * Takes a name and its value out of a map; a comment beside them goes too, comments above stay.
   */
  record RemoveEntry(String path) implements Edit {}

  /** Gives a name of a map another text. References to it are not followed. */
  record RenameKey(String path, String name) implements Edit {}
}
