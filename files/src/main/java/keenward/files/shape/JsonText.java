package keenward.files.shape;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Iterator;
import java.util.Map;

/**
 * Writes JSON: maps, collections, texts, numbers and booleans, in their order, two blanks a level.
 */
final class JsonText {

  private final StringBuilder out = new StringBuilder();

  private JsonText() {}

  /**
   * The value as a text that ends with a line end.
   *
   * @throws IllegalArgumentException for anything that JSON has no form for
   */
  static String of(Object value) {
    JsonText text = new JsonText();
    text.write(value, 0);
    return text.out.append('\n').toString();
  }

  private void write(Object value, int level) {
    switch (value) {
      case Map<?, ?> map -> writeMap(map, level);
      case Collection<?> list -> writeList(list, level);
      case String string -> writeString(string);
      case BigDecimal number -> out.append(number.toPlainString());
      case Integer number -> out.append(number);
      case Boolean bool -> out.append(bool);
      default -> throw new IllegalArgumentException("no JSON for " + value.getClass());
    }
  }

  private void writeMap(Map<?, ?> map, int level) {
    if (map.isEmpty()) {
      out.append("{}");
      return;
    }
    out.append('{');
    Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
    while (entries.hasNext()) {
      Map.Entry<?, ?> entry = entries.next();
      newLine(level + 1);
      writeString(String.valueOf(entry.getKey()));
      out.append(": ");
      write(entry.getValue(), level + 1);
      out.append(entries.hasNext() ? "," : "");
    }
    newLine(level);
    out.append('}');
  }

  private void writeList(Collection<?> list, int level) {
    out.append('[');
    boolean simple =
        list.stream().noneMatch(item -> item instanceof Map || item instanceof Collection);
    Iterator<?> items = list.iterator();
    while (items.hasNext()) {
      Object item = items.next();
      if (!simple) {
        newLine(level + 1);
      }
      write(item, level + 1);
      out.append(items.hasNext() ? simple ? ", " : "," : "");
    }
    if (!simple) {
      newLine(level);
    }
    out.append(']');
  }

  private void newLine(int level) {
    out.append('\n').append("  ".repeat(level));
  }

  private void writeString(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        default -> {
          if (c < ' ' || Character.isSurrogate(c)) {
            out.append(String.format("\\u%04x", (int) c));
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }
}
