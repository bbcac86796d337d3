package keenward.files.plan;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import keenward.files.Golden;
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

class SitePlanShapeTest {

  private static final Path REFERENCE = Path.of("../docs/reference");

  @Test
  void publishedPageAndSchemaAreTheGeneratedOnes() {
    Golden.assertSame(REFERENCE.resolve("site-plan.md"), SitePlanShape.referencePage());
    Golden.assertSame(REFERENCE.resolve("site-plan.schema.json"), SitePlanShape.jsonSchema());
  }

  static List<MapShape> sectionsWithExample() {
    return ReferencePage.sections(SitePlanShape.ROOT).stream()
        .filter(shape -> !shape.example().isEmpty())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("sectionsWithExample")
  void everyExampleOfThePageIsAPlan(MapShape section) {
    PlanReading reading = ExamplePlan.read(section.example());
    assertThat(reading.problems()).as(section.name()).isEmpty();
  }

  @Test
  void everyFieldOfTheFormatIsExplainedAndMostShownInAnExample() {
    for (MapShape section : ReferencePage.sections(SitePlanShape.ROOT)) {
      assertThat(section.meaning()).as(section.name()).isNotBlank();
      for (Field<?> field : section.fields()) {
        assertThat(field.meaning()).as("%s / %s", section.name(), field.name()).endsWith(".");
        if (!field.example().isEmpty()) {
          assertExampleFits(section, field);
        }
      }
    }
  }

  private static void assertExampleFits(MapShape section, Field<?> field) {
    String text = "value: " + field.example() + "\n";
    YamlReading yaml = YamlReader.read("example", text.getBytes(UTF_8));
    assertThat(yaml.problems()).as("%s / %s", section.name(), field.name()).isEmpty();
    YamlDocument document = yaml.document().orElseThrow();
    MapShape wrapper = MapShape.of("wrapper", "For the test.", renamed(field));
    ReadContext context = ShapeReader.read(document, wrapper).context();
    assertThat(context.structureProblems()).as("%s / %s", section.name(), field.name()).isEmpty();
  }

  private static <T> Field<T> renamed(Field<T> field) {
    return Field.required("value", field.shape(), field.example(), field.meaning());
  }
}
