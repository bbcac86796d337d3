package keenward.files.shape;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import keenward.files.QuotedText;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlPointer;

/** Reads a whole document by its shape, and looks up every name that it refers to. */
public final class ShapeReader {

  /**
   * Beyond, looking for the nearest name would take long, and a hostile file asks for it many
   * times.
   */
  private static final int MOST_NAMES_COMPARED = 2000;

  private ShapeReader() {}

  /**
   * What a reading by shape gives: the value as far as it can be read, and everything found wrong.
   */
  public record Result<T>(Optional<T> value, ReadContext context) {}

  /** Reads the document. */
  public static <T> Result<T> read(YamlDocument document, Shape<T> shape) {
    ReadContext context = new ReadContext(document.file());
    Optional<T> value = shape.read(document.root(), context);
    Declarations declarations = new Declarations(document);
    context.references().forEach(reference -> resolve(declarations, reference, context));
    return new Result<>(value, context);
  }

  private static void resolve(
      Declarations declarations, ReadContext.PendingReference reference, ReadContext context) {
    ReferenceShape<?> shape = reference.shape();
    String name = reference.scalar().text();
    Declarations.Names declared = declarations.of(shape.declaredAt());
    if (shape.words().contains(name) || declared.names().contains(name) || !declared.isSure()) {
      return;
    }
    if (context.isMeaningFull()) {
      context.meaning(reference.scalar().span(), "not declared", "", "");
      return;
    }
    List<String> candidates =
        Stream.concat(declared.names().stream().limit(MOST_NAMES_COMPARED), shape.words().stream())
            .distinct()
            .toList();
    context.meaning(
        reference.scalar().span(),
        QuotedText.of(name) + " is not " + shape.label() + " of this file",
        candidates.isEmpty()
            ? "a name that the file declares; it declares none"
            : "one of " + NameList.of(candidates),
        remedy(name, shape, candidates));
  }

  private static String remedy(String name, ReferenceShape<?> shape, List<String> candidates) {
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
}
