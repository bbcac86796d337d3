package keenward.files.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlEntry;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlPointer;
import keenward.files.yaml.YamlRefused;

/** The names that a file declares, by the path patterns of {@link ReferenceShape}. */
final class Declarations {

  private final YamlDocument document;
  private final Map<List<String>, Names> found = new HashMap<>();

  Declarations(YamlDocument document) {
    this.document = document;
  }

  /**
   * Declared names in the order of the file.
   *
   * @param isSure false when a part of the way is broken, so that names may be missing
   */
  record Names(Set<String> names, boolean isSure) {}

  /** The names at any of these patterns. */
  Names of(List<String> patterns) {
    return found.computeIfAbsent(patterns, this::collect);
  }

  private Names collect(List<String> patterns) {
    Set<String> names = new LinkedHashSet<>();
    boolean sure = true;
    for (String pattern : patterns) {
      sure &= collect(YamlPointer.names(pattern), names);
    }
    return new Names(Collections.unmodifiableSet(names), sure);
  }

  private boolean collect(List<String> pattern, Set<String> names) {
    List<YamlNode> level = List.of(document.root());
    boolean sure = true;
    for (int i = 0; i < pattern.size(); i++) {
      List<YamlNode> next = new ArrayList<>();
      for (YamlNode parent : level) {
        if (parent instanceof YamlMap map) {
          for (YamlEntry entry : matching(map, pattern.get(i))) {
            next.add(entry.value());
            if (i == pattern.size() - 1) {
              names.add(entry.name());
            }
          }
        } else {
          sure &= isNothing(parent);
        }
      }
      level = next;
    }
    return sure;
  }

  private static List<YamlEntry> matching(YamlMap map, String step) {
    return step.equals("*") ? map.entries() : map.entry(step).map(List::of).orElseGet(List::of);
  }

  private static boolean isNothing(YamlNode node) {
    return !(node instanceof YamlRefused) && node.span().start() == node.span().end();
  }
}
