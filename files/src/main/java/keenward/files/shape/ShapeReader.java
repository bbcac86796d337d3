package keenward.files.shape;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import keenward.files.QuotedText;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlEntry;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlPointer;
import keenward.files.yaml.YamlRefused;

/** Reads a whole document by its shape, and looks up every name that it refers to. */
public final class ShapeReader {

  private static final int MOST_NAMES_SHOWN = 30;

  private ShapeReader() {}

  /** What a reading by shape gives: the value as far as it can be read, and everything found wrong. */
  public record Result<T>(Optional<T> value, ReadContext context) {}

  /** Reads the document. */
  public static <T> Result<T> read(YamlDocument document, Shape<T> shape) {
    ReadContext context = new ReadContext(document.file());
    Optional<T> value = shape.read(document.root(), context);
    context.references().forEach(reference -> resolve(document, reference, context));
    return new Result<>(value, context);
  }

  private static void resolve(
      YamlDocument document, ReadContext.PendingReference reference, ReadContext context) {
    ReferenceShape<?> shape = reference.shape();
    String name = reference.scalar().text();
    if (shape.words().contains(name)) {
      return;
    }
    Set<String> declared = new LinkedHashSet<>();
    boolean sure = true;
    for (String pattern : shape.declaredAt()) {
      sure &= collect(List.of(document.root()), YamlPointer.names(pattern), declared);
    }
    if (declared.contains(name) || !sure) {
      return;
    }
    Set<String> candidates = new LinkedHashSet<>(declared);
    candidates.addAll(shape.words());
    context.meaning(
        reference.scalar().span(),
        QuotedText.of(name) + " is not " + shape.label() + " of this file",
        expected(candidates),
        remedy(name, shape, candidates));
  }

  private static String expected(Set<String> candidates) {
    if (candidates.isEmpty()) {
      return "a name that the file declares; it declares none";
    }
    String names =
        candidates.stream()
            .limit(MOST_NAMES_SHOWN)
            .map(QuotedText::visible)
            .collect(Collectors.joining(", "));
    return "one of " + names + (candidates.size() > MOST_NAMES_SHOWN ? ", ..." : "");
  }

  private static String remedy(String name, ReferenceShape<?> shape, Set<String> candidates) {
    String question = NearestWord.question(name, candidates);
    return question.isEmpty()
        ? "declare it under " + sections(shape) + ", or write a name that is there"
        : question;
  }

  private static String sections(ReferenceShape<?> shape) {
    return shape.declaredAt().stream()
        .map(path -> YamlPointer.names(path).stream().filter(step -> !step.equals("*")).toList())
        .map(List::getLast)
        .collect(Collectors.joining(" or "));
  }

  /** Adds the names at a pattern; false when a part of the way is broken, so that names may be missing. */
  private static boolean collect(
      List<YamlNode> parents, List<String> pattern, Set<String> names) {
    List<YamlNode> level = parents;
    boolean sure = true;
    for (int i = 0; i < pattern.size(); i++) {
      String step = pattern.get(i);
      boolean last = i == pattern.size() - 1;
      List<YamlNode> next = new ArrayList<>();
      for (YamlNode parent : level) {
        if (parent instanceof YamlMap map) {
          for (YamlEntry entry : map.entries()) {
            if (step.equals("*") || step.equals(entry.name())) {
              next.add(entry.value());
              if (last) {
                names.add(entry.name());
              }
            }
          }
        } else {
          sure &= !(parent instanceof YamlRefused) && parent.span().start() == parent.span().end();
        }
      }
      level = next;
    }
    return sure;
  }
}
