package keenward.inbrowser;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** The values of a line of {@link SystemText}, from left to right. */
final class Values {

  private final String line;
  private final String[] parts;
  private int next;

  Values(String line) {
    this.line = line;
    this.parts = line.split("\t", -1);
  }

  String word() {
    if (next == parts.length) {
      throw new IllegalArgumentException("a value is missing: " + line);
    }
    return parts[next++];
  }

  int number() {
    return Integer.parseInt(word());
  }

  boolean yes() {
    String word = word();
    if (!word.equals("yes") && !word.equals("no")) {
      throw new IllegalArgumentException("neither yes nor no: " + word);
    }
    return word.equals("yes");
  }

  String name() {
    StringBuilder name = new StringBuilder();
    boolean hidden = false;
    for (char letter : word().toCharArray()) {
      if (hidden) {
        name.append(
            switch (letter) {
              case 't' -> '\t';
              case 'n' -> '\n';
              default -> letter;
            });
        hidden = false;
      } else if (letter == '\\') {
        hidden = true;
      } else {
        name.append(letter);
      }
    }
    if (hidden) {
      throw new IllegalArgumentException("nothing follows the backslash: " + line);
    }
    return name.toString();
  }

  List<Integer> numbers() {
    return new ArrayList<>(list(Integer::parseInt));
  }

  Set<Integer> numberSet() {
    return set(Integer::parseInt);
  }

  <T> Set<T> set(Function<String, T> read) {
    return new LinkedHashSet<>(list(read));
  }

  private <T> List<T> list(Function<String, T> read) {
    List<T> values = new ArrayList<>();
    String joined = word();
    if (!joined.isEmpty()) {
      for (String each : joined.split(",", -1)) {
        values.add(read.apply(each));
      }
    }
    return values;
  }

  void needEnd() {
    if (next != parts.length) {
      throw new IllegalArgumentException("there is a value too many: " + line);
    }
  }
}
