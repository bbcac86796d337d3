package keenward.files.panel;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import keenward.core.dialogue.lint.LintReport;
import keenward.core.dialogue.lint.Linter;
import keenward.files.Golden;
import keenward.files.Problem;
import keenward.files.shape.ReadContext;
import keenward.files.shape.SchemaOracle;
import keenward.files.shape.ShapeReader;
import keenward.files.shape.YamlMutation;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlReader;
import keenward.files.yaml.YamlReading;
import org.junit.jupiter.api.Test;

/**
 * Copies of descriptions, each with a slip that people make. What is said about all of them stands
 * in one file, to be read as a whole.
 */
class BrokenPanelsTest {
  private static final Path SAID = Path.of("src/test/resources/panel/broken.errors.txt");
  private static final Path PANELS = Path.of("src/test/resources/panel");
  private static final SchemaOracle SCHEMA = new SchemaOracle(PanelReference.panelSchema());

  /** A slip: in which description, what is written wrongly, and how. */
  private record Slip(String name, String base, String right, String wrong) {}

  private static final List<Slip> SLIPS =
      List.of(
          new Slip("no version", "example", "keenward-panel: 1\n", ""),
          new Slip(
              "version of the future", "example", "keenward-panel: 1\n", "keenward-panel: 2\n"),
          new Slip(
              "unknown section", "example", "kept: when told\n", "kept: when told\nscreen: {}\n"),
          new Slip("misspelt family", "example", "family: menu tree", "family: menu-tre"),
          new Slip("no columns", "example", "lines: 2, columns: 20", "lines: 2"),
          new Slip("lag without a unit", "example", "lag: 0.3 s", "lag: 0.3"),
          new Slip("lag too fine", "example", "lag: 0.3 s", "lag: 0.35 s"),
          new Slip("long key is a key", "example", "hold ok: 2 s", "ok: 2 s"),
          new Slip(
              "key that no keypad has",
              "example",
              "keys: { back: top } }\n  zone task",
              "keys: { esc: top } }\n  zone task"),
          new Slip(
              "confirm by an unknown key",
              "example",
              "confirm: ok, then: top, empty: top }, keys: { back: top } }\n  new code",
              "confirm: enter, then: top, empty: top }, keys: { back: top } }\n  new code"),
          new Slip("misspelt screen", "example", "go: zone name }", "go: zone nmae }"),
          new Slip(
              "misspelt way of leaving", "example", "Save: leave saving", "Save: leave savign"),
          new Slip("misspelt field in a line", "example", "\"{zone.task}\"", "\"{zone.tsak}\""),
          new Slip(
              "brace left open",
              "example",
              "\"{typed *}\"], code: { into",
              "\"{typed *\"], code: { into"),
          new Slip("width of letters", "example", "\"Zone {zone}\"", "\"Zone {zone:two}\""),
          new Slip(
              "misspelt field in a condition",
              "example",
              "when: zone.task = off",
              "when: zone.taks = off"),
          new Slip(
              "value that never is",
              "example",
              "when: zone.task = off",
              "when: zone.task = none of it"),
          new Slip("condition of no kind", "example", "when: zone.task = off", "when: it rains"),
          new Slip(
              "both and and or",
              "example",
              "when: zone.task = off",
              "when: zone.task = off and locked or locked"),
          new Slip(
              "effect of no kind",
              "example",
              "do: [reset zone.name, keep]",
              "do: [erase zone.name, keep]"),
          new Slip(
              "effect on an unknown record",
              "example",
              "do: [reset zone.name, keep]",
              "do: [next sensor, keep]"),
          new Slip(
              "set to what it cannot hold",
              "example",
              "do: [reset zone.name, keep]",
              "do: [set zone.task = roof, keep]"),
          new Slip(
              "field of two types",
              "example",
              "exit-time: { number: 10..90,",
              "exit-time: { digits: 2, number: 10..90,"),
          new Slip(
              "field of no type",
              "example",
              "exit-time: { number: 10..90, step: 10, unit: s,",
              "exit-time: { unit: s,"),
          new Slip("field of width 0", "example", "code: { code: 4,", "code: { code: 0,"),
          new Slip("range the wrong way round", "example", "number: 10..90", "number: 90..10"),
          new Slip("step that misses the end", "example", "step: 10", "step: 30"),
          new Slip("no default", "example", "default: off, ", ""),
          new Slip("default out of range", "example", "default: 30", "default: 5"),
          new Slip("fact of no plan", "example", "from: zone.response", "from: zone.respons"),
          new Slip("fact of the wrong thing", "example", "from: zone.response", "from: user.role"),
          new Slip(
              "record without records",
              "example",
              "records:\n  zone: { numbers: 1..4, from: zones }\n",
              ""),
          new Slip("start in programming", "example", "start: ready", "start: top"),
          new Slip("start nowhere", "example", "start: ready", "start: redy"),
          new Slip(
              "safe way that loses",
              "example",
              "losing: { keeps: nothing, goes: ready, safe: no }",
              "losing: { keeps: nothing, goes: ready, safe: yes }"),
          new Slip(
              "two entries",
              "example",
              "digits: { length: 1, record: zone, advances: yes, then: zone task }",
              "digits: { length: 1, record: zone, advances: yes, then: zone task }, hear: { serial: zone.name, wait: 9 s, expired: top }"),
          new Slip(
              "entry without a goal",
              "example",
              "digits: { length: 1, record: zone,",
              "digits: { length: 1,"),
          new Slip("nothing confirms", "example", "record: zone, advances: yes,", "record: zone,"),
          new Slip(
              "text entered as digits",
              "example",
              "length: 2, into: exit-time",
              "length: 2, into: zone.name"),
          new Slip("screen that shows nothing", "example", "shows: [\"> {cursor}\"], ", ""),
          new Slip(
              "screen called like a destination",
              "example",
              "  exit time:   {",
              "  stay: { shows: [x] }\n  exit time:   {"),
          new Slip(
              "letters without letters",
              "example",
              "typing:\n  letters: { \"2\": \"AB2\", \"3\": \"CD3\", \"4\": \"EF4\" }\n  tap pause: 1.5 s\n",
              ""),
          new Slip("drops out at once", "example", "idle: { after: 60 s", "idle: { after: 0 s"),
          new Slip(
              "name given twice",
              "example",
              "  top:         {",
              "  code: { shows: [x] }\n  top:         {"),
          new Slip("an anchor", "example", "panel: Example 4", "panel: &it Example 4"),
          new Slip(
              "more locations than records", "teasel-12", "numbers: 101..112", "numbers: 101..113"),
          new Slip("location given twice", "teasel-12", "numbers: 411,", "numbers: 410,"),
          new Slip("locations of no field", "teasel-12", "field: delay.tens", "field: delay.tenz"),
          new Slip(
              "sum without powers of two",
              "teasel-12",
              "skipped: { code: \"4\"",
              "skipped: { code: \"3\""),
          new Slip(
              "two options of one code",
              "teasel-12",
              "delayed: { code: \"01\"",
              "delayed: { code: \"00\""),
          new Slip("shift types two characters", "teasel-12", "\"1\": A,", "\"1\": AA,"),
          new Slip(
              "lamps without words",
              "teasel-12",
              "    words: [power, service, \"1\", \"2\", \"3\"]\n",
              ""),
          new Slip(
              "face for an unknown keypad",
              "teasel-12",
              "on: { row of lamps: [power] }\n    keys: { hold",
              "on: { lamps: [power] }\n    keys: { hold"),
          new Slip(
              "decides and shows",
              "yarrow-6",
              "  from the top:\n",
              "  from the top:\n    shows: [x]\n"),
          new Slip(
              "record that is not there", "yarrow-6", "record sensor = 6", "record sensor = 7"),
          new Slip("option takes a word", "yarrow-6", "rings: zone.chime", "rings: zone.name"),
          new Slip("option of no set", "yarrow-6", "rings: zone.chime", "bells: zone.chime"),
          new Slip("listens for no time", "yarrow-6", "wait: 60 s, times", "wait: 0 s, times"),
          new Slip(
              "window without a time",
              "yarrow-6",
              "within 90 s of power-up",
              "within a while of power-up"));

  private static String base(String name) {
    try {
      return name.equals("example")
          ? PanelReference.EXAMPLE
          : Files.readString(PANELS.resolve(name + ".panel.yaml"), UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String broken(Slip slip) {
    String base = base(slip.base());
    assertThat(base).as(slip.name()).containsOnlyOnce(slip.right());
    return base.replace(slip.right(), slip.wrong());
  }

  @Test
  void eachSlipIsRefusedAtItsPlaceWithARemedy() {
    StringBuilder said = new StringBuilder();
    for (Slip slip : SLIPS) {
      PanelReading reading = PanelDescriptionReader.read("x", broken(slip).getBytes(UTF_8));
      assertThat(reading.description()).as(slip.name()).isEmpty();
      assertThat(reading.problems()).as(slip.name()).isNotEmpty();
      said.append("# ").append(slip.name()).append('\n');
      for (Problem problem : reading.problems()) {
        said.append(problem.message()).append('\n');
      }
      said.append('\n');
    }
    Golden.assertSame(SAID, said.toString());
  }

  @Test
  void severalSlipsAreToldInOneRunAndNothingFollowsFromThem() {
    String text =
        PanelReference.EXAMPLE
            .replace("lag: 0.3 s", "lag: soon")
            .replace("go: zone name }", "go: zone nmae }")
            .replace("default: 30", "default: 5")
            .replace("start: ready", "start: redy");
    List<Problem> problems = PanelDescriptionReader.read("x", text.getBytes(UTF_8)).problems();
    assertThat(problems).extracting(Problem::line).isSorted().hasSize(4);
  }

  /** The same trees judged by networknt's json-schema-validator with the published schema. */
  @Test
  void schemaAndReaderAgreeOnTheStructureOfEverySlip() {
    for (Slip slip : SLIPS) {
      document(broken(slip)).ifPresent(document -> assertAgreement(slip.name(), document));
    }
  }

  @Test
  void schemaAndReaderAgreeOnOtherSlipsAndNothingIsThrown() {
    List<String> bases = List.of("example", "teasel-12", "yarrow-6");
    int judged = 0;
    for (long seed = 0; seed < 150; seed++) {
      String base = base(bases.get((int) (seed % bases.size())));
      String text = YamlMutation.of(document(base).orElseThrow(), new Random(seed));
      PanelReading reading = PanelDescriptionReader.read("x", text.getBytes(UTF_8));
      assertThat(reading.description().isPresent())
          .as("seed %d", seed)
          .isEqualTo(reading.problems().isEmpty());
      Optional<YamlDocument> mutant = document(text);
      if (mutant.isPresent()) {
        assertAgreement("seed " + seed, mutant.get());
        judged++;
      }
    }
    assertThat(judged).isGreaterThan(100);
  }

  @Test
  void whateverIsReadCanBeLintedWithoutAnException() {
    List<String> read = new ArrayList<>();
    for (long seed = 0; seed < 60; seed++) {
      String text =
          YamlMutation.of(document(PanelReference.EXAMPLE).orElseThrow(), new Random(seed));
      PanelReading reading = PanelDescriptionReader.read("x", text.getBytes(UTF_8));
      if (reading.description().isPresent()) {
        LintReport report = Linter.lint(reading.description().get());
        read.add(seed + " " + report.findings().size());
      }
    }
    assertThat(read).isNotEmpty();
  }

  private static Optional<YamlDocument> document(String text) {
    YamlReading reading = YamlReader.read("x", text.getBytes(UTF_8));
    return reading.problems().isEmpty() ? reading.document() : Optional.empty();
  }

  private static void assertAgreement(String name, YamlDocument document) {
    ReadContext context = ShapeReader.read(document, PanelDescriptionShape.ROOT).context();
    assertThat(SCHEMA.errors(document.root()).isEmpty())
        .as(
            "%s: reader says %s, schema says %s",
            name, context.structureProblems(), SCHEMA.errors(document.root()))
        .isEqualTo(context.structureProblems().isEmpty());
  }
}
