package keenward.files.yaml;

import java.util.List;
import java.util.Optional;

/**
 * One stretch of a text that is replaced.
 *
 * @param start first character replaced
 * @param end one past the last character replaced
 * @param text what comes instead
 */
record TextCut(int start, int end, String text) {

  String apply(String whole) {
    return whole.substring(0, start) + text + whole.substring(end);
  }

  static TextCut of(YamlDocument document, Edit edit) {
    return switch (edit) {
      case Edit.SetValue set -> set(document, set);
      case Edit.InsertEntry insert -> insert(document, insert);
      case Edit.RemoveEntry remove -> remove(document, remove.path());
      case Edit.RenameKey rename -> {
        Span key = IntendedTree.entry(document, rename.path()).key().span();
        yield new TextCut(key.start(), key.end(), ValueText.name(rename.name()));
      }
    };
  }

  private static TextCut set(YamlDocument document, Edit.SetValue set) {
    Span span = document.find(set.path()).orElseThrow().span();
    String value = ValueText.of(set.value());
    if (span.start() < span.end() || span.start() == 0) {
      return new TextCut(span.start(), span.end(), value);
    }
    // Nothing was given: the place is right behind the colon or dash.
    return new TextCut(
        span.start(), span.end() + blankToReplace(document.text(), span.end()), " " + value);
  }

  /** 1 when a single blank follows that the new text's own blank replaces, otherwise 0. */
  private static int blankToReplace(String text, int offset) {
    boolean single =
        text.startsWith(" ", offset)
            && !text.startsWith("  ", offset)
            && !text.startsWith(" #", offset);
    return single ? 1 : 0;
  }

  private static TextCut insert(YamlDocument document, Edit.InsertEntry insert) {
    YamlMap map = IntendedTree.map(document, insert.map());
    String pair = ValueText.name(insert.name()) + ": " + ValueText.of(insert.value());
    Optional<YamlEntry> before =
        insert.after().isPresent()
            ? insert.after().flatMap(map::entry)
            : map.entries().isEmpty() ? Optional.empty() : Optional.of(map.entries().getLast());
    if (before.isEmpty()) {
      int brace = map.span().start() + 1;
      boolean roomy = document.text().charAt(brace) == ' ';
      return new TextCut(brace, brace, " " + pair + (roomy ? "" : " "));
    }
    int end = before.get().value().span().end();
    if (map.isFlow()) {
      int comma = FlowText.comma(document.text(), end);
      return comma < 0
          ? new TextCut(end, end, ", " + pair)
          : new TextCut(comma + 1, comma + 1, " " + pair + (isLast(map, before.get()) ? "" : ","));
    }
    String indentation = " ".repeat(map.span().column() - 1);
    int lineEnd = Lines.end(document.text(), end);
    return new TextCut(lineEnd, lineEnd, Lines.separator(document.text()) + indentation + pair);
  }

  private static boolean isLast(YamlMap map, YamlEntry entry) {
    return map.entries().getLast().equals(entry);
  }

  private static TextCut remove(YamlDocument document, String path) {
    YamlMap map = IntendedTree.map(document, IntendedTree.parent(path));
    YamlEntry entry = IntendedTree.entry(document, path);
    return map.isFlow()
        ? removeFromFlow(document.text(), map, entry)
        : removeFromBlock(document.text(), map, entry);
  }

  private static TextCut removeFromFlow(String text, YamlMap map, YamlEntry entry) {
    int start = entry.key().span().start();
    int end = entry.value().span().end();
    int comma = FlowText.comma(text, end);
    if (comma >= 0) {
      String between = text.substring(end, comma);
      int blanks = comma + 1;
      while (blanks < text.length() && text.charAt(blanks) == ' ') {
        blanks++;
      }
      return new TextCut(start, blanks, between.isBlank() ? "" : between);
    }
    Optional<YamlEntry> before = IntendedTree.before(map, entry);
    if (before.isEmpty()) {
      return new TextCut(start, end, "");
    }
    int previous = FlowText.comma(text, before.get().value().span().end());
    String between = text.substring(previous + 1, start);
    return new TextCut(previous, end, between.isBlank() ? "" : between);
  }

  private static TextCut removeFromBlock(String text, YamlMap map, YamlEntry entry) {
    int start = entry.key().span().start();
    int end = entry.value().span().end();
    List<YamlEntry> entries = map.entries();
    if (entries.size() == 1) {
      return new TextCut(start, end, "{}");
    }
    int lineEnd = Lines.end(text, end);
    int lineStart = Lines.start(text, start);
    if (!text.substring(lineStart, start).isBlank()) {
      // The first pair of a list's item stands behind its dash, which stays.
      return new TextCut(start, lineEnd, "");
    }
    return new TextCut(lineStart, Lines.afterBreak(text, lineEnd), "");
  }
}
