package keenward.files.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import keenward.core.dialogue.lint.LintReport;
import keenward.core.dialogue.lint.LintSeverity;
import keenward.core.dialogue.lint.Linter;
import keenward.files.Problem;
import org.junit.jupiter.api.Test;

class ShippedPanelsTest {

  @Test
  void marramIsReadAndProved() throws IOException {
    Path file = Path.of("..", "panels", "marram-32.panel.yaml");
    PanelReading reading = PanelDescriptionReader.read("marram-32.panel.yaml", Files.readAllBytes(file));
    assertThat(reading.problems().stream().map(Problem::message)).isEmpty();
    LintReport report = Linter.lint(reading.description().orElseThrow());
    List<String> worse =
        report.findings().stream()
            .filter(finding -> finding.severity() != LintSeverity.NOTE)
            .map(finding -> finding.place() + ": " + finding.what())
            .toList();
    assertThat(worse).isEmpty();
    assertThat(report.complete()).isTrue();
  }
}
