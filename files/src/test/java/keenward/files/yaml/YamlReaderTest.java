package keenward.files.yaml;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import keenward.files.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

class YamlReaderTest {

  private static YamlReading read(String text) {
    return YamlReader.read("a.yaml", text.getBytes(UTF_8));
  }

  private static YamlDocument good(String text) {
    YamlReading reading = read(text);
    assertThat(reading.problems()).isEmpty();
    return reading.document().orElseThrow();
  }

  private static List<String> problems(String text) {
    return read(text).problems().stream().map(Problem::message).toList();
  }

  @Test
  void mapsListsAndValuesKeepOrderTextAndPlace() {
    YamlDocument document =
        good("site: Quay\nzones:\n  2: { name: 'Shop ''A''', on: [a, \"b\\n\"] }\n  1:\n    - x\n");
    YamlMap zones = (YamlMap) document.find("/zones").orElseThrow();
    assertThat(zones.entries()).extracting(YamlEntry::name).containsExactly("2", "1");
    YamlScalar name = (YamlScalar) document.find("/zones/2/name").orElseThrow();
    assertThat(name.text()).isEqualTo("Shop 'A'");
    assertThat(name.isPlain()).isFalse();
    assertThat(name.span()).isEqualTo(new Span(31, 43, 3, 14));
    assertThat(((YamlScalar) document.find("/zones/2/on/1").orElseThrow()).text()).isEqualTo("b\n");
    assertThat(document.find("/zones/2/on/2")).isEmpty();
    assertThat(document.find("/zones/1/0")).isPresent();
    assertThat(document.find("/zones/7")).isEmpty();
  }

  @Test
  void columnsCountCodePointsAndOffsetsCountUnits() {
    YamlDocument document = good("{ \uD83D\uDD14\uD83D\uDD14: a, b: c }");
    Span b = document.place("/b").orElseThrow();
    assertThat(b.column()).isEqualTo(10);
    assertThat(document.text().substring(b.start(), b.end())).isEqualTo("b");
  }

  @Test
  void aBlockEndsWithItsLastValueNotWithTheCommentsBelow() {
    YamlDocument document = good("a:\n  b: 1 # one\n  # about nothing\n\n# next\nc: 2\n");
    Span a = document.find("/a").orElseThrow().span();
    assertThat(document.text().substring(a.start(), a.end())).isEqualTo("b: 1");
  }

  @Test
  void nearestPlaceIsTheLongestPartOfThePathThatExists() {
    YamlDocument document = good("zones:\n  1: { name: x }\n");
    assertThat(document.nearestPlace("/zones/1/response").line()).isEqualTo(2);
    assertThat(document.nearestPlace("/zones/1/response").column()).isEqualTo(3);
    assertThat(document.nearestPlace("/zones/9").column()).isEqualTo(1);
    assertThat(document.nearestPlace("/users/1").line()).isEqualTo(1);
  }

  @Test
  void pathsEscapeSlashAndTilde() {
    YamlDocument document = good("a/b: { c~d: 1 }");
    assertThat(YamlPointer.of("a/b", "c~d")).isEqualTo("/a~1b/c~0d");
    assertThat(YamlPointer.names("/a~1b/c~0d")).containsExactly("a/b", "c~d");
    assertThat(document.find("/a~1b/c~0d")).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyLineEndingCountsAsOneLine(String end) {
    YamlDocument document = good(String.join(end, "a: 1", "b:", "  c: 2", ""));
    assertThat(document.find("/b/c").orElseThrow().span().line()).isEqualTo(3);
    assertThat(document.find("/b/c").orElseThrow().span().column()).isEqualTo(6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a: &x 1                    | a.yaml:1:4: the anchor &x; expected a value without anchor; remove it
          a: &x { b: 1 }             | a.yaml:1:4: the anchor &x; expected a value without anchor; remove it
          a: *x                      | a.yaml:1:4: the alias *x; expected the value itself; write the value out
          <<: { b: 1 }               | a.yaml:1:1: the merge key <<; expected the entries themselves; write them out
          a: !!int 3                 | a.yaml:1:4: the tag "tag:yaml.org,2002:int"; expected a value without tag; remove it
          a: ! 3                     | a.yaml:1:4: the tag "!"; expected a value without tag; remove it
          a: { b: 1, c: 2, b: 3 }    | a.yaml:1:18: the name "b" is given twice (first in line 1); expected each name once; rename or remove one of the two
          a: { 1: 1, "1": 3 }        | a.yaml:1:12: the name "1" is given twice (first in line 1); expected each name once; rename or remove one of the two
          { [a, b]: 1 }              | a.yaml:1:3: a map or list as a name; expected a word or a number
          { ? a : 1 }                | a.yaml:1:5: the name "a" has no value beside it; expected name: value; write a colon and a space after the name, or put a text with a comma in quotes
          { a, b: 1 }                | a.yaml:1:3: the name "a" has no value beside it; expected name: value; write a colon and a space after the name, or put a text with a comma in quotes
          [a: b]                     | a.yaml:1:2: a pair inside [ ]; expected a map in braces; write { name: value } around the pair
          a: "x\\u0000y"             | a.yaml:1:4: a value with the invisible character U+0000; expected characters that can be seen; remove the escape
          a: "x\\u202ey"             | a.yaml:1:4: a value with the invisible character U+202E; expected characters that can be seen; remove the escape
          "a\\nb": 1                 | a.yaml:1:1: a name of several lines; expected a name on one line
          ~: 1                       | a.yaml:1:1: a name without characters; expected a word or a number
          """)
  void refusesWhatIsNotSmallYaml(String text, String expected) {
    assertThat(problems(text)).containsExactly(expected);
  }

  @Test
  void reportsEveryRefusalOfAFileInOneRun() {
    assertThat(problems("a: &x 1\nb: *x\nc: !t 2\nc: 3\n"))
        .hasSize(4)
        .satisfies(list -> assertThat(list.get(3)).startsWith("a.yaml:4:1: the name \"c\""));
  }

  @Test
  void refusesSeveralDocumentsAndDirectives() {
    assertThat(problems("a: 1\n---\nb: 2\n"))
        .containsExactly(
            "a.yaml:2:1: a second document starts; expected one document; move it to a file of its own");
    assertThat(problems("%YAML 1.2\n---\nb: 2\n")).singleElement().asString().contains("directive");
    assertThat(problems("%TAG ! tag:x,2000:\n---\nb: 2\n"))
        .singleElement()
        .asString()
        .contains("directive");
    assertThat(problems("---\na: 1\n...\n")).isEmpty();
  }

  @Test
  void refusesWhatCannotBeSeen() {
    assertThat(problems("\uFEFFa: 1\n")).singleElement().asString().contains("byte order mark");
    assertThat(problems("a: 1\nb:\t2\n"))
        .containsExactly("a.yaml:2:3: a tab character; expected spaces; replace the tab by spaces");
    assertThat(problems("a:\n\tb: 1\n")).hasSize(1);
    assertThat(problems("a: x\u0007y\n"))
        .singleElement()
        .asString()
        .contains("1:5")
        .contains("U+0007");
    assertThat(problems("a: x\u2028y\n")).singleElement().asString().contains("U+2028");
    byte[] latin = {'a', ':', ' ', 'x', '\n', 'b', ':', ' ', (byte) 0xE9, '\n'};
    assertThat(YamlReader.read("a.yaml", latin).problems())
        .singleElement()
        .hasToString(
            "a.yaml:2:4: byte 0xE9 at offset 8 is not UTF-8; expected a text file in UTF-8;"
                + " save the file again with the encoding UTF-8");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "# only a comment\n", "---\n", "\n\n"})
  void anEmptyFileIsAProblemOrHasAnEmptyRoot(String text) {
    YamlReading reading = read(text);
    assertThat(reading.problems().isEmpty()).isEqualTo(text.equals("---\n"));
    assertThat(reading.document().isPresent()).isEqualTo(text.equals("---\n"));
  }

  @Test
  void refusesWhatIsTooLarge() {
    assertThat(problems("a: " + "x".repeat(YamlLimits.SCALAR))).isEmpty();
    assertThat(problems("a: " + "x".repeat(YamlLimits.SCALAR + 1)))
        .containsExactly(
            "a.yaml:1:4: a value of 65537 characters; expected at most 65536; shorten it");
    assertThat(problems("x".repeat(200) + ": 1")).isEmpty();
    assertThat(problems("x".repeat(201) + ": 1"))
        .containsExactly("a.yaml:1:1: a name of 201 characters; expected at most 200; shorten it");
    assertThat(problems("[".repeat(64) + "]".repeat(64))).isEmpty();
    assertThat(problems("[".repeat(65) + "]".repeat(65)))
        .singleElement()
        .asString()
        .startsWith("a.yaml:1:65: maps and lists nested deeper than 64");
    byte[] fits = ("#" + "x".repeat(YamlLimits.BYTES - 6) + "\na: 1").getBytes(UTF_8);
    assertThat(YamlReader.read("a.yaml", fits).problems()).isEmpty();
    assertThat(YamlReader.read("a.yaml", new byte[YamlLimits.BYTES + 1]).problems())
        .singleElement()
        .asString()
        .contains("4194305 bytes");
  }

  @Test
  void hostileBulkEndsSoonAndWithoutOverflow() {
    List<String> bulk =
        List.of(
            "[".repeat(YamlLimits.BYTES),
            "{".repeat(YamlLimits.BYTES),
            "- ".repeat(YamlLimits.BYTES / 2),
            "? ".repeat(YamlLimits.BYTES / 2),
            "a: ".repeat(YamlLimits.BYTES / 3),
            "-\n".repeat(YamlLimits.BYTES / 2),
            "\"".repeat(YamlLimits.BYTES),
            "x".repeat(YamlLimits.BYTES),
            "x\n ".repeat(YamlLimits.BYTES / 3),
            "a: |\n" + " x\n".repeat(YamlLimits.BYTES / 3 - 2),
            "[" + "a,".repeat(YamlLimits.BYTES / 2 - 1),
            "{" + "a:1,".repeat(YamlLimits.BYTES / 4 - 1),
            "a: {b: 1, b: 2}\n".repeat(10_000),
            "!".repeat(YamlLimits.BYTES),
            "&".repeat(YamlLimits.BYTES),
            "[\uD83D\uDD14" + ",a".repeat(YamlLimits.BYTES / 2 - 4),
            "---\n".repeat(YamlLimits.BYTES / 4),
            "\uD83D\uDD14".repeat(YamlLimits.BYTES / 4));
    for (String text : bulk) {
      long start = System.nanoTime();
      YamlReading reading = read(text);
      assertThat(reading.problems().size()).isLessThanOrEqualTo(ProblemList.MOST + 1);
      assertThat((System.nanoTime() - start) / 1_000_000_000L)
          .as("seconds for %s...", text.substring(0, 8))
          .isLessThan(60);
    }
  }

  /** Oracle: the same texts loaded by snakeyaml-engine with its plainest schema. */
  @Test
  void agreesWithAnIndependentLoaderOnRandomDocuments() {
    LoadSettings settings =
        LoadSettings.builder()
            .setAllowDuplicateKeys(false)
            .setSchema(new org.snakeyaml.engine.v2.schema.FailsafeSchema())
            .build();
    for (long seed = 0; seed < 300; seed++) {
      String text = RandomYaml.document(new Random(seed));
      Object loaded = new Load(settings).loadFromString(text);
      assertThat(plain(good(text).root())).as("seed %d:\n%s", seed, text).isEqualTo(loaded);
    }
  }

  private static Object plain(YamlNode node) {
    return switch (node) {
      case YamlScalar scalar -> scalar.text();
      case YamlList list -> list.items().stream().map(YamlReaderTest::plain).toList();
      case YamlMap map ->
          map.entries().stream()
              .collect(Collectors.toMap(YamlEntry::name, entry -> plain(entry.value())));
      case YamlRefused refused -> refused;
    };
  }

  @Test
  void randomBytesGiveATreeOrAProblemNeverAnException() {
    byte[] alphabet = "ab:1- \n{}[],\"'#|>&*!?%@`~\r\t\\x\u00e9".getBytes(UTF_8);
    for (long seed = 0; seed < 10_000; seed++) {
      Random random = new Random(seed);
      byte[] bytes = new byte[random.nextInt(40)];
      for (int i = 0; i < bytes.length; i++) {
        bytes[i] = alphabet[random.nextInt(alphabet.length)];
      }
      try {
        YamlReading reading = YamlReader.read("a.yaml", bytes);
        assertThat(reading.document().isPresent() || !reading.problems().isEmpty()).isTrue();
        reading.document().ifPresent(YamlReaderTest::assertSpansNest);
      } catch (RuntimeException | AssertionError e) {
        throw new AssertionError("seed " + seed + ": " + new String(bytes, UTF_8), e);
      }
    }
  }

  private static void assertSpansNest(YamlDocument document) {
    assertSpansNest(document.root(), 0, document.text().length());
  }

  private static void assertSpansNest(YamlNode node, int from, int to) {
    assertThat(node.span().start()).isBetween(from, to);
    assertThat(node.span().end()).isBetween(node.span().start(), to);
    int start = node.span().start();
    int end = node.span().end();
    switch (node) {
      case YamlMap map ->
          map.entries().forEach(entry -> assertSpansNest(entry.value(), start, end));
      case YamlList list -> list.items().forEach(item -> assertSpansNest(item, start, end));
      case YamlScalar scalar -> assertThat(scalar.text()).isNotNull();
      case YamlRefused refused -> assertThat(refused.span()).isNotNull();
    }
  }
}
