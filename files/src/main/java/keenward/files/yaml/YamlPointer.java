package keenward.files.yaml;

import java.util.ArrayList;
import java.util.List;

/** Paths of nodes in the form of RFC 6901: {@code /zones/1/response}, with ~ as ~0 and / as ~1. */
public final class YamlPointer {

  private YamlPointer() {}

  /** The path through these names and list positions (from 0). */
  public static String of(String... names) {
    String path = "";
    for (String name : names) {
      path = child(path, name);
    }
    return path;
  }

  /** The path of a named child. */
  public static String child(String path, String name) {
    return path + '/' + name.replace("~", "~0").replace("/", "~1");
  }

  /** The path of a list's item, from 0. */
  public static String child(String path, int index) {
    return path + '/' + index;
  }

  /**
   * The names along the path.
   *
   * @throws IllegalArgumentException when the path is neither empty nor starts with /
   */
  public static List<String> names(String path) {
    if (path.isEmpty()) {
      return List.of();
    }
    if (path.charAt(0) != '/') {
      throw new IllegalArgumentException("a path starts with /: " + path);
    }
    List<String> names = new ArrayList<>();
    int start = 1;
    for (int i = 1; i <= path.length(); i++) {
      if (i == path.length() || path.charAt(i) == '/') {
        names.add(path.substring(start, i).replace("~1", "/").replace("~0", "~"));
        start = i + 1;
      }
    }
    return List.copyOf(names);
  }
}
