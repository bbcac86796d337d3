package keenward.files.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.lint.LintReport;
import keenward.core.dialogue.lint.LintSeverity;
import keenward.core.dialogue.lint.Linter;
import keenward.core.dialogue.planned.PanelDefaults;
import keenward.core.plan.Setting;
import keenward.files.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShippedPanelsTest {

  static List<Path> panels() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../panels"))) {
      return Stream.concat(
              files.filter(file -> file.toString().endsWith(PanelFileName.ENDING)),
              Stream.of(TestPanels.TEASEL, TestPanels.YARROW))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("panels")
  void eachIsReadProvedAndCalledByItsFile(Path file) {
    PanelReading reading = TestPanels.reading(file);
    assertThat(reading.problems().stream().map(Problem::message)).isEmpty();
    PanelDescription panel = reading.description().orElseThrow();
    assertThat(file).hasFileName(PanelFileName.of(panel.panel()));
    LintReport report = Linter.lint(panel);
    assertThat(report.findings())
        .filteredOn(finding -> finding.severity() != LintSeverity.NOTE)
        .isEmpty();
    assertThat(report.complete()).isTrue();
    assertThat(report.waysTo()).containsKey(panel.start());
  }

  @ParameterizedTest
  @MethodSource("panels")
  void aWindowAfterPowerUpAndALockNeverMeet(Path file) throws IOException {
    PanelDescription panel = TestPanels.description(file);
    boolean window = Files.readString(file).contains("of power-up");
    boolean lock = panel.leaving().values().stream().anyMatch(Leaving::locks);
    assertThat(window && lock).isFalse();
  }

  @Test
  void marramIsLargeEnoughForTheDemo() {
    PanelDescription marram = TestPanels.description(TestPanels.MARRAM);
    assertThat(marram.fields().stream().filter(field -> field.record().equals("zone")))
        .hasSizeGreaterThanOrEqualTo(12);
    assertThat(marram.keypads())
        .extracting(KeypadKind::shows)
        .containsExactly(KeypadKind.Shows.TEXT, KeypadKind.Shows.WORDS);
    assertThat(marram.findRecord("zone").orElseThrow().size()).isGreaterThanOrEqualTo(26);
  }

  @Test
  void aPanelsOwnDefaultsAreSaidInTheTermsOfThePlan() {
    assertThat(PanelDefaults.of(TestPanels.description(TestPanels.MARRAM)))
        .containsEntry(Setting.EXIT_TIME, 45_000L)
        .containsEntry(Setting.SOUNDER_TIME, 900_000L)
        .containsEntry(Setting.RADIO_SUPERVISION, 12 * 3_600_000L)
        .containsEntry(Setting.EXIT_RESTART, 0L)
        .containsEntry(Setting.ENTRY_DELAY, 30_000L);
    assertThat(PanelDefaults.of(TestPanels.description(TestPanels.TEASEL)))
        .containsEntry(Setting.EXIT_TIME, 30_000L)
        .doesNotContainKey(Setting.EXIT_RESTART);
  }

  @Test
  void aLintFindingIsPlacedInTheFile() {
    PanelReading reading = TestPanels.reading(TestPanels.TEASEL);
    LintReport report = Linter.lint(reading.description().orElseThrow());
    List<Problem> problems =
        PanelDescriptionReader.problems(reading.document().orElseThrow(), report);
    assertThat(problems)
        .extracting(Problem::message)
        .anyMatch(
            message -> message.matches("teasel-12.panel.yaml:\\d+:5: note: has no word for .*"));
    assertThat(problems).extracting(Problem::line).allMatch(line -> line > 1);
  }

  @Test
  void fieldsOfTheFamiliesDifferAndNoJavaKnows() {
    assertThat(TestPanels.description(TestPanels.TEASEL).locations()).hasSize(55);
    assertThat(TestPanels.description(TestPanels.YARROW).fields())
        .extracting(Field::name)
        .contains("sensor.called", "leaving-time");
  }
}
