package keenward.files.shape;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The reference page of a format, in Markdown: a section with a table of its fields for each map
 * shape.
 */
public final class ReferencePage {

  private final StringBuilder out = new StringBuilder();

  private ReferencePage() {}

  /**
   * The page as a text, the same for the same shape.
   *
   * @param introduction Markdown below the title
   */
  public static String of(MapShape root, String title, String introduction) {
    ReferencePage page = new ReferencePage();
    page.out.append("# ").append(title).append("\n\n").append(introduction.strip()).append('\n');
    for (MapShape shape : sections(root)) {
      page.section(shape);
    }
    return page.out.toString();
  }

  /** Every map shape that can be reached, in the order of first mention, depth first. */
  public static List<MapShape> sections(MapShape root) {
    Set<MapShape> found = new LinkedHashSet<>();
    Deque<MapShape> waiting = new ArrayDeque<>();
    waiting.push(root);
    while (!waiting.isEmpty()) {
      MapShape shape = waiting.pop();
      if (found.add(shape)) {
        shape.fields().reversed().stream()
            .flatMap(field -> mapsIn(field.shape()).reversed().stream())
            .forEach(waiting::push);
      }
    }
    return List.copyOf(found);
  }

  private static List<MapShape> mapsIn(Shape<?> shape) {
    return switch (shape) {
      case MapShape map -> List.of(map);
      case LaterShape later -> List.of(later.shape().get());
      case ConvertedShape<?, ?> converted -> mapsIn(converted.inner());
      case ParsedShape<?, ?> parsed -> mapsIn(parsed.inner());
      case UnknownOrShape<?> known -> mapsIn(known.known());
      case ListShape<?> list -> mapsIn(list.item());
      case NamesShape<?, ?> names -> mapsIn(names.value());
      case EitherShape<?> either ->
          either.shapes().stream().flatMap(each -> mapsIn(each).stream()).toList();
      case TextShape text -> List.of();
      case WholeNumberShape number -> List.of();
      case DecimalShape number -> List.of();
      case WordShape<?> word -> List.of();
      case QuantityShape<?> quantity -> List.of();
      case PatternShape<?> pattern -> List.of();
      case ReferenceShape<?> reference -> List.of();
    };
  }

  private void section(MapShape shape) {
    out.append("\n## ").append(title(shape)).append("\n\n").append(shape.meaning()).append("\n\n");
    out.append("| field | value | unit | meaning | when left out | example |\n");
    out.append("| --- | --- | --- | --- | --- | --- |\n");
    for (Field<?> field : shape.fields()) {
      row(field);
    }
    if (!shape.example().isEmpty()) {
      out.append("\n```yaml\n").append(shape.example().stripTrailing()).append("\n```\n");
    }
  }

  private void row(Field<?> field) {
    String name = "`" + field.name() + "`";
    String usual =
        field.required() ? "(compulsory)" : field.usual().isEmpty() ? "not known" : field.usual();
    String example = field.example().isEmpty() ? "" : "`" + field.example() + "`";
    List<String> cells =
        List.of(
            field.required() ? "**" + name + "**" : name,
            value(field.shape()),
            units(field.shape()),
            field.meaning(),
            usual,
            example);
    out.append(
        cells.stream()
            .map(cell -> cell.replace("|", "\\|"))
            .collect(Collectors.joining(" | ", "| ", " |\n")));
  }

  private static String value(Shape<?> shape) {
    return switch (shape) {
      case MapShape map -> link(map);
      case LaterShape later -> link(later.shape().get());
      case ConvertedShape<?, ?> converted -> value(converted.inner());
      case ParsedShape<?, ?> parsed -> value(parsed.inner());
      case UnknownOrShape<?> known -> value(known.known()) + ", or `unknown`";
      case ListShape<?> list -> list(list);
      case NamesShape<?, ?> names ->
          "map from " + names.key().label() + " to " + value(names.value());
      case EitherShape<?> either ->
          either.shapes().stream().map(ReferencePage::value).collect(Collectors.joining(", or "));
      case WordShape<?> word -> words(word.words().keySet());
      case ReferenceShape<?> reference ->
          (reference.form() instanceof TextShape ? "name of " : "number of ")
              + reference.label()
              + (reference.words().isEmpty() ? "" : ", or " + words(reference.words()));
      case QuantityShape<?> quantity -> quantity.expectation();
      case TextShape text -> text.expectation();
      case WholeNumberShape number -> number.expectation();
      case DecimalShape number -> number.expectation();
      case PatternShape<?> pattern -> pattern.expectation();
    };
  }

  private static String list(ListShape<?> list) {
    String count =
        list.least() == list.most()
            ? "list of " + list.least() + ": "
            : list.least() > 0 ? "list of " + list.least() + " or more: " : "list of: ";
    return count + value(list.item());
  }

  private static String units(Shape<?> shape) {
    return switch (shape) {
      case QuantityShape<?> quantity -> String.join(", ", quantity.units());
      case ConvertedShape<?, ?> converted -> units(converted.inner());
      case ParsedShape<?, ?> parsed -> units(parsed.inner());
      case UnknownOrShape<?> known -> units(known.known());
      case ListShape<?> list -> units(list.item());
      case NamesShape<?, ?> names -> units(names.value());
      case EitherShape<?> either ->
          either.shapes().stream()
              .map(ReferencePage::units)
              .filter(text -> !text.isEmpty())
              .distinct()
              .collect(Collectors.joining(", "));
      default -> "";
    };
  }

  private static String words(Set<String> words) {
    return words.stream().map(word -> "`" + word + "`").collect(Collectors.joining(", "));
  }

  private static String link(MapShape shape) {
    return "[" + shape.name() + "](#" + shape.name().replace(' ', '-') + ")";
  }

  private static String title(MapShape shape) {
    return Character.toUpperCase(shape.name().charAt(0)) + shape.name().substring(1);
  }
}
