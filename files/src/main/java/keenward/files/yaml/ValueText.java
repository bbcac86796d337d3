package keenward.files.yaml;

import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import keenward.files.yaml.NewValue.Single;

/**
 * Writes values on one line, the way the demo plans are written: {@code { name: Shop door, zones:
 * [1, 2] }}.
 */
final class ValueText {

  /** What surely reads back as itself without quotes, in a block as well as between brackets. */
  private static final Pattern SAFE =
      Pattern.compile(
          "[\\p{L}\\p{N}./+-]([\\p{L}\\p{N} ./+()'&%;=<>*_\u00b0\u00b2-]*[\\p{L}\\p{N}./+()'&%;=<>*_\u00b0\u00b2-])?");

  /** What a reader may take for something other than text. */
  private static final Pattern NUMBER_LIKE = Pattern.compile("[-+.]?[0-9][-+0-9a-fA-FxoeE._:]*");

  private static final Set<String> WORDS =
      Set.of("unknown", "yes", "no", "true", "false", "null", "on", "off", "~");

  private ValueText() {}

  static String of(NewValue value) {
    return switch (value) {
      case Single single -> isWrittenPlain(single) ? single.text() : quoted(single.text());
      case NewValue.Names names ->
          names.entries().isEmpty()
              ? "{}"
              : names.entries().entrySet().stream()
                  .map(entry -> name(entry.getKey()) + ": " + of(entry.getValue()))
                  .collect(Collectors.joining(", ", "{ ", " }"));
      case NewValue.Items items ->
          items.items().stream().map(ValueText::of).collect(Collectors.joining(", ", "[", "]"));
    };
  }

  /** A name of a map; it means the same with quotes and without. */
  static String name(String name) {
    return isSafe(name) && !name.equals("null") ? name : quoted(name);
  }

  static boolean isWrittenPlain(Single single) {
    return single.plain() || (isSafe(single.text()) && !looksLikeSomethingElse(single.text()));
  }

  private static boolean isSafe(String text) {
    // A lone or leading dash, and dots or dashes that end or start a document, mean something to
    // YAML.
    return SAFE.matcher(text).matches()
        && !text.equals("-")
        && !text.startsWith("- ")
        && !text.startsWith("---")
        && !text.startsWith("...");
  }

  private static boolean looksLikeSomethingElse(String text) {
    return WORDS.contains(text) || NUMBER_LIKE.matcher(text).matches();
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2).append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        default -> out.append(c);
      }
    }
    return out.append('"').toString();
  }
}
