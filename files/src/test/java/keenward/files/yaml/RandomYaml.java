package keenward.files.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Writes random documents of the small YAML in every style it knows, with comments and blank lines.
 */
final class RandomYaml {

  private static final String[] WORDS = {
    "shop",
    "door-2",
    "Stair hall",
    "12",
    "7.5",
    "unknown",
    "120 ft",
    "24-hour",
    "\u00c5sen",
    "\uD83D\uDD14",
    "a:b",
    "x#y",
    "yes"
  };

  private final Random random;
  private final String end;
  private final StringBuilder out = new StringBuilder();

  private RandomYaml(Random random) {
    this.random = random;
    this.end = random.nextInt(4) == 0 ? "\r\n" : "\n";
  }

  static String document(Random random) {
    RandomYaml yaml = new RandomYaml(random);
    if (random.nextInt(4) == 0) {
      yaml.out.append("# head").append(yaml.end);
    }
    yaml.blockMap(0, 3);
    if (random.nextInt(4) == 0) {
      yaml.out.append("# tail").append(random.nextBoolean() ? yaml.end : "");
    }
    return yaml.out.toString();
  }

  private void noise(int indent) {
    switch (random.nextInt(8)) {
      case 0 -> out.append(end);
      case 1 -> out.append(" ".repeat(indent)).append("# note: ").append(word()).append(end);
      case 2 -> out.append("# far left").append(end);
      default -> {}
    }
  }

  private void endLine() {
    if (random.nextInt(5) == 0) {
      out.append("   # beside");
    }
    out.append(end);
  }

  private List<String> names() {
    List<String> names = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      names.add(word().replace(":", "").replace("#", "") + i);
    }
    return names;
  }

  private void blockMap(int indent, int depth) {
    for (String name : names()) {
      noise(indent);
      out.append(" ".repeat(indent)).append(quoteSometimes(name)).append(':');
      blockValue(indent, depth);
    }
  }

  private void blockList(int indent, int depth) {
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      noise(indent);
      out.append(" ".repeat(indent)).append('-');
      blockValue(indent, depth);
    }
  }

  private void blockValue(int indent, int depth) {
    int kind = random.nextInt(depth > 0 ? 8 : 4);
    switch (kind) {
      case 0 -> {
        out.append(" |").append(end);
        out.append(" ".repeat(indent + 2)).append("line one").append(end);
        out.append(" ".repeat(indent + 2)).append("# not a comment").append(end);
      }
      case 4, 5 -> {
        endLine();
        blockMap(indent + 2, depth - 1);
      }
      case 6 -> {
        endLine();
        blockList(indent + 2, depth - 1);
      }
      case 7 -> {
        out.append(' ');
        flow(depth - 1);
        endLine();
      }
      default -> {
        out.append(' ').append(scalar());
        endLine();
      }
    }
  }

  private void flow(int depth) {
    if (depth == 0) {
      out.append(scalar());
    } else if (random.nextBoolean()) {
      out.append("{ ");
      String separator = "";
      for (String name : names()) {
        out.append(separator).append(quoteSometimes(name)).append(": ");
        flow(depth - 1);
        separator = ", ";
      }
      out.append(random.nextInt(5) == 0 ? "," : "").append(" }");
    } else {
      out.append('[');
      int count = random.nextInt(3);
      for (int i = 0; i < count; i++) {
        out.append(i == 0 ? "" : ", ");
        flow(depth - 1);
      }
      out.append(']');
    }
  }

  private String word() {
    return WORDS[random.nextInt(WORDS.length)];
  }

  private String scalar() {
    return quoteSometimes(word());
  }

  private String quoteSometimes(String text) {
    return switch (random.nextInt(6)) {
      case 0 -> '"' + text + '"';
      case 1 -> "'" + text + "'";
      default -> text;
    };
  }
}
