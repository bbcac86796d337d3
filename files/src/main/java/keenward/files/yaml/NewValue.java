package keenward.files.yaml;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value to be written into a file. */
public sealed interface NewValue {

  /**
   * A single value.
   *
   * @param text its text
   * @param plain whether it has to stand without quotes (a number, a word, a quantity); otherwise
   *     it is text, and quoted wherever it would look like something else
   */
  record Single(String text, boolean plain) implements NewValue {}

  /** Names with values, in order. */
  record Names(Map<String, NewValue> entries) implements NewValue {
    /** Keeps the order. */
    public Names {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }
  }

  /** Values in order. */
  record Items(List<NewValue> items) implements NewValue {
    /** Copies the list. */
    public Items {
      items = List.copyOf(items);
    }
  }

  /** A number, word or quantity, without quotes. */
  static NewValue plain(String text) {
    return new Single(text, true);
  }

  /** A text, quoted where it has to be. */
  static NewValue text(String text) {
    return new Single(text, false);
  }

  /** The value on one line, as it is written into a file. */
  default String inline() {
    return ValueText.of(this);
  }

  /** A name of a map, as it is written into a file. */
  static String name(String name) {
    return ValueText.name(name);
  }

  /** The tree that a reader has to find where this value is written; its places mean nothing. */
  default YamlNode tree() {
    return switch (this) {
      case Single single ->
          new YamlScalar(
              single.text(),
              ValueText.isWrittenPlain(single)
                  ? YamlScalar.Style.PLAIN
                  : YamlScalar.Style.DOUBLE_QUOTED,
              Span.NOWHERE);
      case Names names -> {
        List<YamlEntry> entries = new ArrayList<>();
        names
            .entries()
            .forEach((name, value) -> entries.add(new YamlEntry(key(name), value.tree())));
        yield new YamlMap(entries, true, Span.NOWHERE);
      }
      case Items items ->
          new YamlList(items.items().stream().map(NewValue::tree).toList(), true, Span.NOWHERE);
    };
  }

  private static YamlScalar key(String name) {
    return new YamlScalar(name, YamlScalar.Style.PLAIN, Span.NOWHERE);
  }
}
