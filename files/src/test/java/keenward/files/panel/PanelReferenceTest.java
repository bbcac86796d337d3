package keenward.files.panel;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import keenward.core.dialogue.lint.Linter;
import keenward.files.Golden;
import keenward.files.Problem;
import keenward.files.shape.Field;
import keenward.files.shape.MapShape;
import keenward.files.shape.ReadContext;
import keenward.files.shape.ReferencePage;
import keenward.files.shape.ShapeReader;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlReader;
import keenward.files.yaml.YamlReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PanelReferenceTest {
  private static final Path REFERENCE = Path.of("../docs/reference");

  @Test
  void publishedPagesAndSchemasAreTheGeneratedOnes() {
    Golden.assertSame(REFERENCE.resolve("panel-description.md"), PanelReference.panelPage());
    Golden.assertSame(
        REFERENCE.resolve("panel-description.schema.json"), PanelReference.panelSchema());
    Golden.assertSame(REFERENCE.resolve("found-memory.md"), PanelReference.foundPage());
    Golden.assertSame(REFERENCE.resolve("found-memory.schema.json"), PanelReference.foundSchema());
  }

  @Test
  void theWholeExampleIsReadAndProved() {
    PanelReading reading =
        PanelDescriptionReader.read("example", PanelReference.EXAMPLE.getBytes(UTF_8));
    assertThat(reading.problems().stream().map(Problem::message)).isEmpty();
    assertThat(Linter.lint(reading.description().orElseThrow()).fit()).isTrue();
  }

  static List<MapShape> sectionsWithExample() {
    return ReferencePage.sections(PanelDescriptionShape.ROOT).stream()
        .filter(shape -> !shape.example().isEmpty())
        .toList();
  }

  /** Examples are parts of a description; what they lack is no fault, anything else is. */
  @ParameterizedTest
  @MethodSource("sectionsWithExample")
  void everyExampleOfThePageHasTheRightShape(MapShape section) {
    String text =
        section.example().startsWith("keys:")
            ? "screens:\n  x:\n    shows: [x]\n" + section.example().indent(4)
            : section.example();
    YamlReading yaml = YamlReader.read("example", text.getBytes(UTF_8));
    assertThat(yaml.problems()).isEmpty();
    List<String> faults =
        ShapeReader.read(yaml.document().orElseThrow(), PanelDescriptionShape.ROOT)
            .context()
            .structureProblems()
            .stream()
            .map(Problem::message)
            .filter(message -> !message.contains("the panel description has no"))
            .toList();
    assertThat(faults).as(section.name()).isEmpty();
  }

  static Stream<MapShape> sections() {
    return Stream.concat(
        ReferencePage.sections(PanelDescriptionShape.ROOT).stream(),
        ReferencePage.sections(FoundMemoryShape.ROOT).stream());
  }

  @ParameterizedTest
  @MethodSource("sections")
  void everyFieldIsExplainedAndItsExampleFits(MapShape section) {
    assertThat(section.meaning()).isNotBlank();
    for (Field<?> field : section.fields()) {
      assertThat(field.meaning()).as(field.name()).endsWith(".");
      if (!field.example().isEmpty()) {
        YamlReading yaml =
            YamlReader.read("example", ("value: " + field.example() + "\n").getBytes(UTF_8));
        assertThat(yaml.problems()).as(field.name()).isEmpty();
        assertThat(faults(yaml.document().orElseThrow(), field)).as(field.name()).isEmpty();
      }
    }
  }

  private static List<Problem> faults(YamlDocument document, Field<?> field) {
    MapShape wrapper = MapShape.of("wrapper", "For the test.", renamed(field));
    ReadContext context = ShapeReader.read(document, wrapper).context();
    return context.structureProblems();
  }

  private static <T> Field<T> renamed(Field<T> field) {
    return Field.required("value", field.shape(), field.example(), field.meaning());
  }

  @Test
  void theExampleOfAFoundMemoryIsReadAgainstTheShippedPanel() throws IOException {
    PanelReading panel =
        PanelDescriptionReader.read(
            "panel", Files.readAllBytes(Path.of("../panels/" + PanelFileName.of("Marram 32"))));
    FoundReading found =
        FoundMemoryReader.read(
            "example",
            FoundMemoryShape.ROOT.example().getBytes(UTF_8),
            panel.description().orElseThrow());
    assertThat(found.problems().stream().map(Problem::message)).isEmpty();
  }
}
