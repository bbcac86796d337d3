package keenward.files.zonelist;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import keenward.files.Golden;
import keenward.files.plan.PlanReading;
import keenward.files.plan.SitePlanReader;
import keenward.files.table.Table;
import keenward.files.table.TableReader;
import keenward.files.table.TableRow;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lists as technicians keep them, no two alike, each with what becomes of it. */
class SampleListsTest {

  private static final Path FOLDER = Path.of("src/test/resources/zonelist");

  static List<Path> lists() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> !file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static Table table(Path list) throws IOException {
    return TableReader.read(list.toString(), Files.readAllBytes(list)).table().orElseThrow();
  }

  private static String plan(ZoneList zones, Path list) {
    return SiteText.of(zones, String.valueOf(list.getFileName()), "Sample");
  }

  @ParameterizedTest
  @MethodSource("lists")
  void makesThePlanAndTheReportThatWereReadAndFoundRight(Path list) throws IOException {
    ZoneList zones = ZoneListReader.read(table(list), ListMap.NONE);
    StringBuilder text = new StringBuilder(plan(zones, list));
    zones.notes().forEach(note -> text.append("## ").append(note.message()).append('\n'));
    Golden.assertSame(FOLDER.resolve(list.getFileName() + ".yaml"), text.toString());
  }

  @ParameterizedTest
  @MethodSource("lists")
  void makesAPlanThatTheReaderTakes(Path list) throws IOException {
    ZoneList zones = ZoneListReader.read(table(list), ListMap.NONE);
    PlanReading plan = SitePlanReader.read("list.yaml", plan(zones, list).getBytes(UTF_8));
    assertThat(plan.problems()).isEmpty();
    assertThat(plan.plan().orElseThrow().zones()).hasSameSizeAs(zones.zones()).isNotEmpty();
    assertThat(plan.plan().orElseThrow().unplaced()).hasSameSizeAs(zones.unplaced());
  }

  /** Every cell is in the plan as it stands, or is a word that the plan says in its own words. */
  @ParameterizedTest
  @MethodSource("lists")
  void dropsNothing(Path list) throws IOException {
    Table table = table(list);
    ZoneList zones = ZoneListReader.read(table, ListMap.NONE);
    String plan = plan(zones, list).replace("\\\"", "\"");
    for (TableRow row : table.rows()) {
      for (String cell : row.cells()) {
        assertThat(plan.contains(cell) || isUnderstood(cell))
            .as("row %d, %s, in%n%s", row.number(), cell, plan)
            .isTrue();
      }
    }
  }

  private static boolean isUnderstood(String cell) {
    String rest = cell.replaceAll("(?i)[0-9.,:]+ *(s|sek\\.?|min|h)?\\b|\\b(silent|still)\\b", " ");
    return Plain.words(rest).isEmpty()
        || isWhole(Words.RESPONSES.read(rest))
        || isWhole(Words.WIRINGS.read(rest))
        || isWhole(Words.KINDS.read(rest.replaceAll("(?i)\\b(x|and|und|et|y)\\b", " ")))
        || isWhole(Words.ALL.read(rest))
        || isWhole(Words.COLUMNS.read(rest));
  }

  private static boolean isWhole(Vocabulary.Reading<?> reading) {
    return reading.rest().isEmpty() && !reading.found().isEmpty();
  }
}
