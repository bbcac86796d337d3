package keenward.files.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import keenward.files.yaml.Span;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlEntry;
import keenward.files.yaml.YamlList;
import keenward.files.yaml.YamlMap;
import keenward.files.yaml.YamlNode;
import keenward.files.yaml.YamlScalar;

/** Changes one value or name of a document's text at random, as a slip of a hand would. */
public final class YamlMutation {

  private static final String[] VALUES = {
    "unknown",
    "\"unknown\"",
    "0",
    "-1",
    "7",
    "007",
    "\"7\"",
    "3.0",
    "2.5",
    "999999999999999",
    "12345678901234567890",
    "yes",
    "true",
    "~",
    "\"\"",
    "\"  \"",
    "Shop",
    "entry-exit",
    "45 s",
    "45",
    "45 parsecs",
    "120 ft",
    "99999999 km",
    "2026-02-30",
    "2024-02-29",
    "1e3",
    "[]",
    "[7, 7.0]",
    "[Shop, Shop]",
    "{}",
    "{ name: x }",
    "[[0, 0], [1, 1]]",
    "\"two\\nlines\"",
    "\"ends with line\\n\"",
    "x x x x x x x x x x x x x x x x x x x x x x x x x x x x x x x x",
    "\u00a0",
    "04:10",
    "-105 dBm",
    "\u00b5",
    "\"#\"",
    ".5",
    "0x10",
    "+3",
    "null",
    "\"null\"",
    " 22 AWG"
  };

  private static final String[] NAMES = {
    "name",
    "nmae",
    "7",
    "0",
    "01",
    "\"7\"",
    "unknown",
    "outside",
    "\" x\"",
    "\"x \"",
    "x",
    "zones",
    "response",
    "site"
  };

  private YamlMutation() {}

  /** The text with one value or name replaced. */
  public static String of(YamlDocument document, Random random) {
    List<Span> values = new ArrayList<>();
    List<Span> names = new ArrayList<>();
    collect(document.root(), values, names);
    boolean name = random.nextInt(4) == 0;
    List<Span> spans = name ? names : values;
    String[] texts = name ? NAMES : VALUES;
    Span span = spans.get(random.nextInt(spans.size()));
    String text = texts[random.nextInt(texts.length)];
    return document.text().substring(0, span.start())
        + text
        + document.text().substring(span.end());
  }

  private static void collect(YamlNode node, List<Span> values, List<Span> names) {
    switch (node) {
      case YamlMap map -> {
        for (YamlEntry entry : map.entries()) {
          names.add(entry.key().span());
          collect(entry.value(), values, names);
        }
        if (map.isFlow()) {
          values.add(map.span());
        }
      }
      case YamlList list -> {
        list.items().forEach(item -> collect(item, values, names));
        if (list.flow()) {
          values.add(list.span());
        }
      }
      default -> {
        if (node instanceof YamlScalar scalar && scalar.style() != YamlScalar.Style.LITERAL) {
          values.add(node.span());
        }
      }
    }
  }
}
