package keenward.files.shape;

import static java.nio.charset.StandardCharsets.UTF_8;
import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;
import static keenward.files.shape.Shapes.date;
import static keenward.files.shape.Shapes.decimal;
import static keenward.files.shape.Shapes.either;
import static keenward.files.shape.Shapes.later;
import static keenward.files.shape.Shapes.list;
import static keenward.files.shape.Shapes.longText;
import static keenward.files.shape.Shapes.names;
import static keenward.files.shape.Shapes.numberReference;
import static keenward.files.shape.Shapes.oneOrMore;
import static keenward.files.shape.Shapes.pattern;
import static keenward.files.shape.Shapes.quantity;
import static keenward.files.shape.Shapes.reference;
import static keenward.files.shape.Shapes.text;
import static keenward.files.shape.Shapes.wholeNumber;
import static keenward.files.shape.Shapes.word;
import static keenward.files.shape.Shapes.yesNo;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import keenward.core.plan.Fact;
import keenward.core.plan.ZoneResponse;
import keenward.core.quantities.Length;
import keenward.core.quantities.Parsed;
import keenward.core.quantities.Span;
import keenward.files.Golden;
import keenward.files.Problem;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlReader;
import keenward.files.yaml.YamlReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapeReaderTest {

  static final Field<String> NAME = required("name", text(16), "Shop", "How people call it.");
  static final Field<Fact<String>> SERIAL =
      optional("serial", text(20).orUnknown(), "0114", "Printed number.");
  static final Field<Fact<Length>> WIDTH =
      optional(
          "width", quantity(Length::parse, Length.units()).orUnknown(), "36 m", "Clear width.");
  static final Field<Boolean> CHIME =
      optional("chime", yesNo(), "yes", "Whether it chimes.").usual("`no`");
  static final Field<ZoneResponse> RESPONSE =
      optional("response", word(ZoneResponse.class), "fire", "What happens.");
  static final Field<List<Integer>> FOLLOWS =
      optional(
          "follows",
          list(numberReference("a thing", 99, "/things/*")).withoutRepetition(),
          "[1]",
          "Things it follows.");
  static final Field<String> ROOM =
      optional(
          "room",
          reference("a room", "/floors/*/rooms/*").orWords(List.of("outside")),
          "Shop",
          "Where.");
  static final Field<List<BigDecimal>> AT =
      optional("at", list(decimal("-100", "100")).of(2, 2), "[1, 2.5]", "Where on the floor.");
  static final Field<LocalDate> FITTED = optional("fitted", date(), "2026-10-02", "When fitted.");
  static final Field<String> CLOCK =
      optional(
          "clock", pattern("a time hh:mm", "^[0-2][0-9]:[0-5][0-9]$", t -> t), "04:10", "When.");
  static final Field<String> NOTE = optional("note", longText(100), "", "Anything else.");
  static final Field<Integer> EVEN =
      optional(
          "even",
          wholeNumber(0, 100)
              .parsedBy(n -> n % 2 == 0 ? Parsed.of(n) : Parsed.expected("an even number")),
          "4",
          "A number.");
  static final Field<List<String>> LINES =
      optional("lines", oneOrMore(text(30)), "[a, b]", "Lines.");
  static final MapShape THING =
      MapShape.of(
          "thing",
          "A thing.",
          NAME,
          SERIAL,
          WIDTH,
          CHIME,
          RESPONSE,
          FOLLOWS,
          ROOM,
          AT,
          FITTED,
          CLOCK,
          NOTE,
          EVEN,
          LINES);

  static final Field<Map<String, String>> ROOMS =
      optional("rooms", names(NameKey.name("a room", "outside"), text(16)), "", "Rooms.");
  static final MapShape FLOOR = MapShape.of("floor", "A floor.", ROOMS);

  static final Field<Integer> VERSION = required("version", wholeNumber(1, 1), "1", "Version.");
  static final Field<Map<Integer, Fields>> THINGS =
      optional("things", names(NameKey.number("a thing's number", 2), THING), "", "Things.");
  static final Field<Map<String, Fields>> FLOORS =
      optional("floors", names(NameKey.name("a floor"), FLOOR), "", "Floors.");
  static final Field<Object> DELAY =
      optional(
          "delay",
          either(
              quantity(Span::parse, Span.units()),
              names(NameKey.number("a delay", 1), quantity(Span::parse, Span.units())),
              word("none")),
          "45 s",
          "One delay, or several.");
  static final Field<Fields> BRANCH =
      optional("branch", later(() -> ShapeReaderTest.tree()), "", "A tree that holds itself.");
  static final Field<Integer> LEAF = optional("leaf", wholeNumber(0, 9), "3", "A leaf.");
  static final MapShape TREE = MapShape.of("tree", "A tree.", LEAF, BRANCH);
  static final Field<Fields> ROOT_TREE = optional("tree", TREE, "", "The tree.");
  static final MapShape ROOT =
      MapShape.of("sample", "All of it.", VERSION, THINGS, FLOORS, DELAY, ROOT_TREE)
          .example("version: 1\ndelay: 45 s");

  private static MapShape tree() {
    return TREE;
  }

  private static final String GOOD =
      """
      version: 1
      things:
        1: { name: Shop door, serial: 0114, width: 36 m, chime: yes, response: entry-exit, follows: [2] }
        2: { name: 12, serial: "unknown", width: unknown, room: Shop, at: [1, -2.50], fitted: 2024-02-29, clock: "04:10" }
        3: { name: c, serial: unknown, even: 4, room: outside, lines: one, note: "a\\nb" }
        4: { name: d, lines: [one, 2] }
      floors:
        Ground: { rooms: { Shop: front, Yard store: back } }
      delay: { 1: 30 s, 2: 90 s }
      tree: { leaf: 3, branch: { branch: { leaf: 1 } } }
      """;

  private static YamlDocument document(String text) {
    YamlReading reading = YamlReader.read("a.yaml", text.getBytes(UTF_8));
    assertThat(reading.problems()).isEmpty();
    return reading.document().orElseThrow();
  }

  private static List<String> problems(String text) {
    return ShapeReader.read(document(text), ROOT).context().problemsAfter(List.of()).stream()
        .map(Problem::message)
        .toList();
  }

  @Test
  void readsEveryKindOfValue() {
    ShapeReader.Result<Fields> result = ShapeReader.read(document(GOOD), ROOT);
    assertThat(result.context().problemsAfter(List.of())).isEmpty();
    Fields root = result.value().orElseThrow();
    assertThat(root.get(THINGS).keySet()).containsExactly(1, 2, 3, 4);
    List<Fields> things = List.copyOf(root.get(THINGS).values());
    Fields first = things.get(0);
    assertThat(first.get(NAME)).isEqualTo("Shop door");
    assertThat(first.fact(SERIAL)).isEqualTo(Fact.of("0114"));
    assertThat(first.fact(WIDTH).map(Length::metres)).isEqualTo(Fact.of(36.0));
    assertThat(first.find(CHIME)).contains(true);
    assertThat(first.given(RESPONSE)).isEqualTo(Fact.of(ZoneResponse.ENTRY_EXIT));
    assertThat(first.list(FOLLOWS)).containsExactly(2);
    assertThat(first.mentions(ROOM)).isFalse();
    Fields second = things.get(1);
    assertThat(second.get(NAME)).isEqualTo("12");
    assertThat(second.fact(SERIAL)).isEqualTo(Fact.of("unknown"));
    assertThat(second.fact(WIDTH)).isEqualTo(Fact.unknown());
    assertThat(second.get(AT)).containsExactly(new BigDecimal("1"), new BigDecimal("-2.50"));
    assertThat(second.get(FITTED)).isEqualTo(LocalDate.of(2024, 2, 29));
    assertThat(things.get(2).fact(SERIAL)).isEqualTo(Fact.unknown());
    assertThat(things.get(2).get(LINES)).containsExactly("one");
    assertThat(things.get(3).get(LINES)).containsExactly("one", "2");
    assertThat(root.get(ROOT_TREE).get(BRANCH).get(BRANCH).get(LEAF)).isEqualTo(1);
    assertThat(root.get(DELAY)).isInstanceOf(Map.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          { }                                                | a.yaml:1:1: the sample has no "version"; expected the number 1; add for example version: 1
          { version: 2 }                                     | a.yaml:1:12: "2"; expected the number 1
          { version: "1" }                                   | a.yaml:1:12: "1"; expected the number 1; write it without quotes
          { version: 1, thngs: {} }                          | a.yaml:1:15: a sample has no field "thngs"; expected one of version, things, floors, delay, tree; did you mean "things"?
          { version: 1, things: }                            | a.yaml:1:22: nothing is given; expected a map from a thing's number to a map of fields of a thing; write the value, or remove the line
          { version: 1, things: { 0: { name: a } } }         | a.yaml:1:25: "0" as a thing's number; expected a whole number from 1 to 99; rename it
          { version: 1, things: { 1: { name: [] } } }        | a.yaml:1:36: a list; expected a text of up to 16 characters
          { version: 1, things: { 1: { name: abcdefghijklmnopq } } } | a.yaml:1:36: too long: "abcdefghijklmnopq"; expected a text of up to 16 characters; shorten it
          { version: 1, things: { 1: { name: a, width: 12 } } } | a.yaml:1:46: "12"; expected a length such as 36 m or 120 ft; add the unit: cm, ft, in, km, m, mm, yd
          { version: 1, things: { 1: { name: a, chime: true } } } | a.yaml:1:46: "true"; expected yes or no
          { version: 1, things: { 1: { name: a, chime: Yes } } } | a.yaml:1:46: "Yes"; expected yes or no; did you mean "yes"?
          { version: 1, things: { 1: { name: a, response: entry exit } } } | a.yaml:1:49: "entry exit"; expected one of entry-exit, follower, perimeter, instant, 24-hour, hold-up, fire, carbon-monoxide, medical, tamper, technical, key-switch; did you mean "entry-exit"?
          { version: 1, things: { 1: { name: a, follows: [2] } } } | a.yaml:1:49: "2" is not a thing of this file; expected one of 1; declare it under things, or write a name that is there
          { version: 1, things: { 1: { name: a, follows: 1 } } } | a.yaml:1:48: "1"; expected a list of the number of a thing; put it in brackets: [ ]
          { version: 1, things: { 1: { name: a, follows: [1, 1] } } } | a.yaml:1:52: "1" for the second time; expected each once; remove it
          { version: 1, things: { 1: { name: a, room: shp } }, floors: { G: { rooms: { Shop: x } } } } | a.yaml:1:45: "shp" is not a room of this file; expected one of Shop, outside; did you mean "Shop"?
          { version: 1, things: { 1: { name: a, room: Attic } } } | a.yaml:1:45: "Attic" is not a room of this file; expected one of outside; declare it under rooms, or write a name that is there
          { version: 1, things: { 1: { name: a, at: [1] } } } | a.yaml:1:43: a list of 1 item; expected a list of exactly 2: a number from -100 to 100
          { version: 1, things: { 1: { name: a, at: [1, 2 m] } } } | a.yaml:1:47: "2 m"; expected a number from -100 to 100
          { version: 1, things: { 1: { name: a, fitted: 2025-02-29 } } } | a.yaml:1:47: "2025-02-29"; expected a date yyyy-mm-dd
          { version: 1, things: { 1: { name: a, even: 3 } } } | a.yaml:1:45: "3"; expected an even number
          { version: 1, things: { 1: { name: a, even: 07 } } } | a.yaml:1:45: "07"; expected a whole number from 0 to 100; write it without leading zeros
          { version: 1, floors: { unknown: {} } }            | a.yaml:1:25: "unknown" as the name of a floor; expected a name of up to 60 characters without blanks at its ends, other than unknown; rename it
          { version: 1, delay: [] }                          | a.yaml:1:22: a list; expected a time such as 45 s, 5 min or 24 h, or a map from a delay to a time such as 45 s, 5 min or 24 h, or the word none
          { version: 1, delay: soon }                        | a.yaml:1:22: "soon"; expected a time such as 45 s, 5 min or 24 h, or a map from a delay to a time such as 45 s, 5 min or 24 h, or the word none
          """)
  void saysWhatIsWrongWhereAndWhatWasExpected(String text, String expected) {
    assertThat(problems(text)).containsExactly(expected);
  }

  @Test
  void aFigureOutOfRangeIsAFaultOfMeaning() {
    ReadContext context =
        ShapeReader.read(document("version: 1\ndelay: 99999999 d\n"), ROOT).context();
    assertThat(context.structureProblems()).isEmpty();
    assertThat(context.meaningProblems()).hasSize(1);
  }

  @Test
  void reportsEveryFaultOfAFileInItsOrder() {
    assertThat(
            problems(
                "version: 3\nthings:\n  x: {}\n  2: { name: a, room: b, chime: c }\nextra: 1\n"))
        .extracting(line -> line.substring(0, line.indexOf(' ')))
        .containsExactly(
            "a.yaml:1:10:",
            "a.yaml:3:3:",
            "a.yaml:3:6:",
            "a.yaml:4:23:",
            "a.yaml:4:33:",
            "a.yaml:5:1:");
  }

  @Test
  void aBrokenSectionDoesNotMakeItsNamesMissing() {
    assertThat(
            problems(
                "version: 1\nfloors: { G: { rooms: [a] } }\nthings: { 1: { name: a, room: Attic } }\n"))
        .hasSize(1);
  }

  /**
   * The same trees judged by networknt's json-schema-validator with the schema that the shape
   * writes.
   */
  @Test
  void schemaAndReadingAgreeOnStructureUnderRandomMutation() {
    SchemaOracle oracle = new SchemaOracle(JsonSchema.of(ROOT, "urn:keenward:sample", "Sample"));
    YamlDocument good = document(GOOD);
    assertThat(oracle.errors(good.root())).isEmpty();
    int rejected = 0;
    for (long seed = 0; seed < 3000; seed++) {
      String text = YamlMutation.of(good, new Random(seed));
      YamlReading reading = YamlReader.read("a.yaml", text.getBytes(UTF_8));
      if (reading.problems().isEmpty()) {
        YamlDocument mutant = reading.document().orElseThrow();
        ReadContext context = ShapeReader.read(mutant, ROOT).context();
        List<Error> errors = oracle.errors(mutant.root());
        assertThat(context.isStructureFine())
            .as(
                "seed %d%n%s%nreading: %s%nschema: %s",
                seed, text, context.structureProblems(), errors)
            .isEqualTo(errors.isEmpty());
        rejected += context.isStructureFine() ? 0 : 1;
      }
    }
    assertThat(rejected).isBetween(500, 2500);
  }

  @Test
  void schemaAndPageAreAsKept() {
    Path kept = Path.of("src/test/resources/shape");
    Golden.assertSame(
        kept.resolve("sample.schema.json"), JsonSchema.of(ROOT, "urn:keenward:sample", "Sample"));
    Golden.assertSame(
        kept.resolve("sample.md"), ReferencePage.of(ROOT, "Sample", "What a sample looks like."));
  }

  @Test
  void nearestWordForgivesCaseHyphensAndAThirdOfTheLetters() {
    List<String> words = List.of("entry-exit", "follower", "fire");
    assertThat(NearestWord.find("Entry_Exit", words)).contains("entry-exit");
    assertThat(NearestWord.find("folower", words)).contains("follower");
    assertThat(NearestWord.find("fier", words)).isEmpty();
    assertThat(NearestWord.find("fir", words)).contains("fire");
    assertThat(NearestWord.find("instant", words)).isEmpty();
    assertThat(NearestWord.find("x".repeat(100_000), words)).isEmpty();
  }
}
