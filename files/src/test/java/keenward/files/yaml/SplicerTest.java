package keenward.files.yaml;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

class SplicerTest {

  private static YamlDocument document(String text) {
    YamlReading reading = YamlReader.read("a.yaml", text.getBytes(UTF_8));
    assertThat(reading.problems()).isEmpty();
    return reading.document().orElseThrow();
  }

  private static String after(String text, Edit edit) {
    return switch (Splicer.apply(document(text), edit)) {
      case EditResult.Done done -> done.document().text();
      case EditResult.Refused refused -> "refused: " + refused.problem().message();
    };
  }

  private static String lines(String text) {
    return text.replace("^", "\n");
  }

  /** In texts and results, ^ stands for a line end. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = true,
      textBlock =
          """
          a: 1   # one^b: 2^        | /a   | 45 s     | a: 45 s   # one^b: 2^
          a:   # nothing yet^b: 2^  | /a   | x        | a: x   # nothing yet^b: 2^
          a:^  - 1^  - # two^       | /a/1 | x        | a:^  - 1^  - x # two^
          a: { b: , c: [1, 2] }^    | /a/b | x        | a: { b: x, c: [1, 2] }^
          a: { b: 1, c: [1, 2] }^   | /a/c | 3        | a: { b: 1, c: 3 }^
          a: { b: 1, c: [1, 2] }^   | /a/c/0 | 7      | a: { b: 1, c: [7, 2] }^
          "a": 'x''y'^b: 2^         | /a   | z        | "a": z^b: 2^
          a:^  b: 1^  # in^# out^c: 2^ | /a | z       | a:^  z^  # in^# out^c: 2^
          """)
  void setReplacesTheValueOnly(String text, String path, String value, String expected) {
    assertThat(after(lines(text), new Edit.SetValue(path, NewValue.plain(value))))
        .isEqualTo(lines(expected));
  }

  @Test
  void setReplacesABlockTextAndLeavesTheCommentBelow() {
    assertThat(
            after(
                "a: |\n  one\n  two\n\n# about b\nb: 2\n",
                new Edit.SetValue("/a", NewValue.text("three"))))
        .isEqualTo("a: three\n\n# about b\nb: 2\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a: 1   # one^# about b^b: 2^      |      | '' | a: 1   # one^# about b^b: 2^n: v^
          a: 1   # one^# about b^b: 2^      |      | a  | a: 1   # one^n: v^# about b^b: 2^
          a: 1                              |      | '' | a: 1^n: v
          m:^  a: 1^  # in m^# out^b: 2^    | /m   | '' | m:^  a: 1^  n: v^  # in m^# out^b: 2^
          m:^  - a: 1^    b: 2^  - c: 3^    | /m/0 | '' | m:^  - a: 1^    b: 2^    n: v^  - c: 3^
          m:^  - a: 1^    b: 2^  - c: 3^    | /m/0 | a  | m:^  - a: 1^    n: v^    b: 2^  - c: 3^
          m: {}^                            | /m   | '' | m: { n: v }^
          m: { }^                           | /m   | '' | m: { n: v }^
          m: { a: 1, b: 2 }^                | /m   | '' | m: { a: 1, b: 2, n: v }^
          m: { a: 1, b: 2 }^                | /m   | a  | m: { a: 1, n: v, b: 2 }^
          m: { a: 1, b: 2, }^               | /m   | '' | m: { a: 1, b: 2, n: v }^
          m: {^  a: 1, # one^  b: 2 # two^}^ | /m  | '' | m: {^  a: 1, # one^  b: 2, n: v # two^}^
          m: {^  a: 1, # one^  b: 2 # two^}^ | /m  | a  | m: {^  a: 1, n: v, # one^  b: 2 # two^}^
          """)
  void insertAddsOnePairWhereItBelongs(String text, String map, String after, String expected) {
    Optional<String> name = after.isEmpty() ? Optional.empty() : Optional.of(after);
    assertThat(
            after(
                lines(text),
                new Edit.InsertEntry(map == null ? "" : map, name, "n", NewValue.plain("v"))))
        .isEqualTo(lines(expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # top^a: 1   # one^# about b^b: 2^ | /a   | # top^# about b^b: 2^
          a: 1^b: 2                          | /b   | a: 1^
          m:^  a: 1^  # in^# out^c: 1^       | /m   | '  # in^# out^c: 1^'
          m:^  a: 1^# out^c: 1^              | /m/a | m:^  {}^# out^c: 1^
          a: 1^                              | /a   | {}^
          m:^  - a: 1^    b: 2^              | /m/0/a | m:^  - ^    b: 2^
          m:^  - a: 1^    b: 2^              | /m/0/b | m:^  - a: 1^
          m: { a: 1, b: 2 }^                 | /m/a | m: { b: 2 }^
          m: { a: 1, b: 2 }^                 | /m/b | m: { a: 1 }^
          m: { a: 1, b: 2, }^                | /m/b | m: { a: 1, }^
          m: { a: 1 }^                       | /m/a | m: {  }^
          m: {^  a: 1, # one^  b: 2 # two^}^ | /m/a | m: {^  # one^  b: 2 # two^}^
          m: {^  a: 1, # one^  b: 2 # two^}^ | /m/b | m: {^  a: 1 # one^   # two^}^
          """)
  void removeTakesOnePairAndLeavesOtherComments(String text, String path, String expected) {
    assertThat(after(lines(text), new Edit.RemoveEntry(path))).isEqualTo(lines(expected));
  }

  @Test
  void renameReplacesTheNameOnly() {
    assertThat(
            after("zones: # all\n  1: { name: x } # one\n", new Edit.RenameKey("/zones/1", "12")))
        .isEqualTo("zones: # all\n  12: { name: x } # one\n");
    assertThat(after("a: 1\n", new Edit.RenameKey("/a", "x: y"))).isEqualTo("\"x: y\": 1\n");
  }

  @Test
  void lineEndsOfTheFileAreUsed() {
    assertThat(
            after(
                "a: 1\r\nb: 2\r\n",
                new Edit.InsertEntry("", Optional.of("a"), "n", NewValue.plain("v"))))
        .isEqualTo("a: 1\r\nn: v\r\nb: 2\r\n");
    assertThat(after("a: 1\r\nb: 2\r\n", new Edit.RemoveEntry("/a"))).isEqualTo("b: 2\r\n");
  }

  @Test
  void placesBehindRareCharactersAreFound() {
    assertThat(
            after(
                "{ \uD83D\uDD14: \uD83D\uDD14, b: 1 }",
                new Edit.SetValue("/b", NewValue.plain("2"))))
        .isEqualTo("{ \uD83D\uDD14: \uD83D\uDD14, b: 2 }");
  }

  @Test
  void textIsQuotedWhereverItWouldLookLikeSomethingElse() {
    for (String text :
        List.of(
            "0471",
            "unknown",
            "yes",
            "null",
            "~",
            "1e3",
            "a: b",
            "a #b",
            "[a]",
            "- a",
            "",
            " a",
            "two\nlines",
            "\"q\"",
            "back\\slash",
            "04:10",
            "x,y",
            "---",
            "&a",
            "*a",
            "!a",
            "%a",
            "@a",
            "?",
            "|")) {
      String written = after("a: 1\n", new Edit.SetValue("/a", NewValue.text(text)));
      assertThat(written).as(text).startsWith("a: \"").endsWith("\"\n");
      assertThat(((YamlScalar) document(written).find("/a").orElseThrow()).text()).isEqualTo(text);
    }
    for (String text :
        List.of("Shop door", "120 ft", "24-hour", "Harrow & Finch", "\u00c5sen", "O'Neil")) {
      assertThat(after("a: 1\n", new Edit.SetValue("/a", NewValue.text(text))))
          .isEqualTo("a: " + text + "\n");
    }
  }

  @Test
  void nestedValuesAreWrittenOnOneLine() {
    Map<String, NewValue> zone = new LinkedHashMap<>();
    zone.put("name", NewValue.text("Shop door"));
    zone.put("follows", new NewValue.Items(List.of(NewValue.plain("1"), NewValue.plain("2"))));
    zone.put("none", new NewValue.Names(Map.of()));
    assertThat(
            after(
                "zones:\n  1: x\n",
                new Edit.InsertEntry("/zones", Optional.empty(), "2", new NewValue.Names(zone))))
        .isEqualTo("zones:\n  1: x\n  2: { name: Shop door, follows: [1, 2], none: {} }\n");
  }

  @Test
  void whatDoesNotFitIsRefusedWithItsPlace() {
    assertThat(after("a: 1\n", new Edit.SetValue("/b", NewValue.plain("2"))))
        .isEqualTo(
            "refused: a.yaml:1:1: /b: nothing is here; expected a path of the file; make the change by hand");
    assertThat(after("a: 1\nb: 2\n", new Edit.RenameKey("/b", "a")))
        .startsWith("refused: a.yaml:2:1: /b: the name is taken");
    assertThat(
            after(
                "a: 1\nb: 2\n",
                new Edit.InsertEntry("", Optional.empty(), "a", NewValue.plain("1"))))
        .startsWith("refused: a.yaml:1:1: the file: the name is taken");
    assertThat(
            after("a: 1\n", new Edit.InsertEntry("/a", Optional.empty(), "b", NewValue.plain("1"))))
        .startsWith("refused: a.yaml:1:1: /a: no map is here");
    assertThat(after("a: 1\n", new Edit.RemoveEntry("")))
        .startsWith("refused: a.yaml:1:1: the file: the whole file has no name");
    assertThat(after("a: [1]\n", new Edit.RemoveEntry("/a/0"))).contains("no map is here");
    assertThat(after("a: 1\n", new Edit.SetValue("/a", NewValue.plain("x: y"))))
        .contains("this edit would leave a file that cannot be read");
    assertThat(after("a: 1\n", new Edit.SetValue("/a", NewValue.plain("x # y"))))
        .contains("this edit would change more than it should");
    assertThat(after("a: 1\n", new Edit.SetValue("/a", NewValue.text("x\u0000y"))))
        .contains("U+0000");
    assertThat(
            after(
                "a: |+\n  x\n\nb: 1\n",
                new Edit.InsertEntry("", Optional.of("a"), "c", NewValue.plain("1"))))
        .contains("this edit would change more than it should");
  }

  /** Oracle: the same change made to the maps and lists that snakeyaml-engine loads. */
  @Test
  void randomEditsOfRandomDocumentsDoJustWhatTheySay() {
    LoadSettings settings = LoadSettings.builder().setSchema(new FailsafeSchema()).build();
    int[] kinds = new int[4];
    for (long seed = 0; seed < 1000; seed++) {
      Random random = new Random(seed);
      String text = RandomYaml.document(random);
      YamlDocument document = document(text);
      Edit edit = randomEdit(document, random);
      EditResult result = Splicer.apply(document, edit);
      String context = "seed " + seed + "\n" + edit + "\n" + text;
      assertThat(result).as(context).isInstanceOf(EditResult.Done.class);
      String changed = ((EditResult.Done) result).document().text();
      Object model = new Load(settings).loadFromString(text);
      assertThat(new Load(settings).loadFromString(changed))
          .as(context + "\n=>\n" + changed)
          .isEqualTo(Model.after(model, edit));
      assertThat(comments(changed))
          .as(context + "\n=>\n" + changed)
          .isEqualTo(survivors(document, edit));
      kinds[kind(edit)]++;
    }
    assertThat(Arrays.stream(kinds).min().orElseThrow()).isGreaterThan(150);
  }

  private static int kind(Edit edit) {
    return switch (edit) {
      case Edit.SetValue set -> 0;
      case Edit.InsertEntry insert -> 1;
      case Edit.RemoveEntry remove -> 2;
      case Edit.RenameKey rename -> 3;
    };
  }

  /** Whole-line comments outside the value that the edit replaces or removes. */
  private static List<String> survivors(YamlDocument document, Edit edit) {
    String text = document.text();
    int start = text.length();
    int end = text.length();
    if (edit instanceof Edit.SetValue(String path, NewValue value)) {
      start = document.find(path).orElseThrow().span().start();
      end = document.find(path).orElseThrow().span().end();
    } else if (edit instanceof Edit.RemoveEntry(String path)) {
      start = document.place(path).orElseThrow().start();
      end = document.find(path).orElseThrow().span().end();
    }
    List<String> comments = new ArrayList<>(comments(text.substring(0, start)));
    comments.addAll(comments(text.substring(end)));
    return comments;
  }

  private static List<String> comments(String text) {
    return text.lines()
        .filter(line -> line.matches("\\s*# (note|far|head|tail).*"))
        .map(String::strip)
        .toList();
  }

  private static Edit randomEdit(YamlDocument document, Random random) {
    List<String> nodes = new ArrayList<>();
    List<String> maps = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    collect(document.root(), "", nodes, maps, keys);
    NewValue value =
        switch (random.nextInt(4)) {
          case 0 -> NewValue.text("a: b # c");
          case 1 -> new NewValue.Items(List.of(NewValue.plain("1"), NewValue.text("\uD83D\uDD14")));
          case 2 -> new NewValue.Names(Map.of("k", NewValue.plain("45 s")));
          default -> NewValue.plain("120 ft");
        };
    return switch (random.nextInt(4)) {
      case 0 -> new Edit.SetValue(nodes.get(random.nextInt(nodes.size())), value);
      case 1 -> {
        String map = maps.get(random.nextInt(maps.size()));
        List<YamlEntry> entries = ((YamlMap) document.find(map).orElseThrow()).entries();
        Optional<String> after =
            random.nextBoolean() || entries.isEmpty()
                ? Optional.empty()
                : Optional.of(entries.get(random.nextInt(entries.size())).name());
        yield new Edit.InsertEntry(map, after, "new one", value);
      }
      case 2 -> new Edit.RemoveEntry(keys.get(random.nextInt(keys.size())));
      default ->
          new Edit.RenameKey(
              keys.get(random.nextInt(keys.size())), random.nextBoolean() ? "renamed" : "x: y");
    };
  }

  private static void collect(
      YamlNode node, String path, List<String> nodes, List<String> maps, List<String> keys) {
    if (!path.isEmpty()) {
      nodes.add(path);
    }
    switch (node) {
      case YamlMap map -> {
        maps.add(path);
        for (YamlEntry entry : map.entries()) {
          String child = YamlPointer.child(path, entry.name());
          keys.add(child);
          collect(entry.value(), child, nodes, maps, keys);
        }
      }
      case YamlList list -> {
        for (int i = 0; i < list.items().size(); i++) {
          collect(list.items().get(i), YamlPointer.child(path, i), nodes, maps, keys);
        }
      }
      default -> {}
    }
  }

  /** The edit made to plain maps and lists. */
  private static final class Model {

    static Object after(Object model, Edit edit) {
      return switch (edit) {
        case Edit.SetValue(String path, NewValue value) ->
            change(
                model, YamlPointer.names(path), (parent, name) -> put(parent, name, plain(value)));
        case Edit.InsertEntry(String map, Optional<String> after, String name, NewValue value) -> {
          List<String> path = new ArrayList<>(YamlPointer.names(map));
          path.add(name);
          yield change(model, path, (parent, key) -> put(parent, key, plain(value)));
        }
        case Edit.RemoveEntry(String path) ->
            change(
                model,
                YamlPointer.names(path),
                (parent, name) -> ((Map<?, ?>) parent).remove(name));
        case Edit.RenameKey(String path, String to) ->
            change(
                model,
                YamlPointer.names(path),
                (parent, name) ->
                    put(parent, to, Objects.requireNonNull(((Map<?, ?>) parent).remove(name))));
      };
    }

    private static Object change(
        Object model, List<String> path, BiConsumer<Object, String> change) {
      Object parent = model;
      for (String name : path.subList(0, path.size() - 1)) {
        Object child =
            parent instanceof Map<?, ?> map
                ? map.get(name)
                : ((List<?>) parent).get(Integer.parseInt(name));
        parent = Objects.requireNonNull(child);
      }
      change.accept(parent, path.getLast());
      return model;
    }

    @SuppressWarnings("unchecked") // Everything that the loader gives is a map, a list or a text.
    private static void put(Object parent, String name, Object value) {
      if (parent instanceof Map<?, ?> map) {
        ((Map<String, Object>) map).put(name, value);
      } else {
        ((List<Object>) parent).set(Integer.parseInt(name), value);
      }
    }

    private static Object plain(NewValue value) {
      return switch (value) {
        case NewValue.Single single -> single.text();
        case NewValue.Items items -> items.items().stream().map(Model::plain).toList();
        case NewValue.Names names -> {
          Map<String, Object> map = new LinkedHashMap<>();
          names.entries().forEach((name, each) -> map.put(name, plain(each)));
          yield map;
        }
      };
    }
  }
}
