package keenward.files.panel;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import keenward.files.QuotedText;
import keenward.files.shape.NearestWord;
import keenward.files.shape.ReadContext;
import keenward.files.yaml.Span;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlEntry;
import keenward.files.yaml.YamlList;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/** Reports faults of meaning at places of a document, by pointer. */
final class Faults {
  private static final int MOST_NAMES_SHOWN = 16;

  private final YamlDocument document;
  private final ReadContext context;

  Faults(YamlDocument document, ReadContext context) {
    this.document = document;
    this.context = context;
  }

  /** The place of the value at a pointer, or of the nearest thing there is. */
  static Span place(YamlDocument document, String pointer) {
    return document
        .find(pointer)
        .map(YamlNode::span)
        .orElseGet(() -> document.nearestPlace(pointer));
  }

  void add(String pointer, String what, String expected, String remedy) {
    context.meaning(place(document, pointer), what, expected, remedy);
  }

  /** Reports a name that nothing has. */
  void unknown(String pointer, String label, String name, Collection<String> candidates) {
    String question = NearestWord.question(name, candidates);
    add(
        pointer,
        "there is no " + label + " " + QuotedText.of(name),
        candidates.isEmpty() ? "a " + label + "; there is none" : "one of " + some(candidates),
        question.isEmpty() ? "write one that is there, or add it" : question);
  }

  private static String some(Collection<String> candidates) {
    String names = candidates.stream().limit(MOST_NAMES_SHOWN).collect(Collectors.joining(", "));
    return candidates.size() > MOST_NAMES_SHOWN ? names + ", ..." : names;
  }

  boolean isList(String pointer) {
    return document.find(pointer).orElse(null) instanceof YamlList;
  }

  boolean hasItems(String pointer) {
    return document.find(pointer).orElse(null) instanceof YamlList list && !list.items().isEmpty();
  }

  /** Texts of a list, whether they are right or not. */
  List<String> items(String pointer) {
    return document.find(pointer).orElse(null) instanceof YamlList list
        ? list.items().stream()
            .filter(YamlScalar.class::isInstance)
            .map(item -> ((YamlScalar) item).text())
            .toList()
        : List.of();
  }

  /** Names of the entries of a map, whether their values are right or not. */
  List<String> declared(String pointer) {
    return document.find(pointer).orElse(null) instanceof YamlMap map
        ? map.entries().stream().map(YamlEntry::name).toList()
        : List.of();
  }
}
