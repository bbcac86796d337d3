package keenward.files.plan;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Copies of one small plan, each with a slip that people make; what is said about it stands beside
 * it.
 */
class BrokenPlansTest {

  private static final Path FOLDER = Path.of("src/test/resources/broken");
  private static final Path BASE = Path.of("src/test/resources/plan/base-of-broken.site.yaml");
  private static final SchemaOracle SCHEMA = new SchemaOracle(SitePlanShape.jsonSchema());

  static List<String> brokenPlans() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".site.yaml"))
          .sorted()
          .toList();
    }
  }

  private static byte[] bytes(String name) throws IOException {
    return Files.readAllBytes(FOLDER.resolve(name));
  }

  @Test
  void thereAreManyAndTheirBaseIsSound() throws IOException {
    assertThat(brokenPlans()).hasSizeGreaterThanOrEqualTo(40);
    assertThat(SitePlanReader.read("base", Files.readAllBytes(BASE)).problems()).isEmpty();
    assertThat(SCHEMA.errors(document("base", Files.readAllBytes(BASE)).orElseThrow().root()))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("brokenPlans")
  void eachIsRefusedWithEveryFaultAtItsPlace(String name) throws IOException {
    PlanReading reading = SitePlanReader.read(name, bytes(name));
    assertThat(reading.plan()).isEmpty();
    String said =
        reading.problems().stream()
            .map(Problem::message)
            .collect(Collectors.joining("\n", "", "\n"));
    Golden.assertSame(FOLDER.resolve(name.replace(".site.yaml", ".errors.txt")), said);
  }

  /** The same trees judged by networknt's json-schema-validator with the published schema. */
  @ParameterizedTest
  @MethodSource("brokenPlans")
  void schemaAndReaderAgreeOnItsStructure(String name) throws IOException {
    Optional<YamlDocument> document = document(name, bytes(name));
    if (document.isPresent()) {
      assertAgreement(name, document.get());
    } else {
      assertThat(YamlReader.read(name, bytes(name)).problems()).isNotEmpty();
    }
  }

  @Test
  void schemaAndReaderAgreeOnThousandsOfOtherSlips() throws IOException {
    YamlDocument full = document("full", Files.readAllBytes(SitePlanReaderTest.FULL)).orElseThrow();
    int judged = 0;
    for (long seed = 0; seed < 1500; seed++) {
      String text = YamlMutation.of(full, new Random(seed));
      Optional<YamlDocument> mutant = document("mutant", text.getBytes(UTF_8));
      if (mutant.isPresent()) {
        assertAgreement("seed " + seed, mutant.get());
        judged++;
      }
    }
    assertThat(judged).isGreaterThan(1000);
  }

  private static Optional<YamlDocument> document(String name, byte[] bytes) {
    YamlReading reading = YamlReader.read(name, bytes);
    return reading.problems().isEmpty() ? reading.document() : Optional.empty();
  }

  private static void assertAgreement(String name, YamlDocument document) {
    ReadContext context = ShapeReader.read(document, SitePlanShape.ROOT).context();
    List<Error> errors = SCHEMA.errors(document.root());
    assertThat(errors.isEmpty())
        .as("%s: reader says %s, schema says %s", name, context.structureProblems(), errors)
        .isEqualTo(context.structureProblems().isEmpty());
  }
}
