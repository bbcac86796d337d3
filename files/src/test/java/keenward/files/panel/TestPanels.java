package keenward.files.panel;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import keenward.core.dialogue.description.PanelDescription;
import keenward.files.Problem;

/** The descriptions that tests use. */
final class TestPanels {
  static final Path MARRAM = Path.of("../panels", PanelFileName.of("Marram 32"));
  static final Path TEASEL = Path.of("src/test/resources/panel", PanelFileName.of("Teasel 12"));
  static final Path YARROW = Path.of("src/test/resources/panel", PanelFileName.of("Yarrow 6"));

  private TestPanels() {}

  static PanelReading reading(Path file) {
    try {
      return PanelDescriptionReader.read(
          String.valueOf(file.getFileName()), Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static PanelDescription description(Path file) {
    PanelReading reading = reading(file);
    return reading
        .description()
        .orElseThrow(() ->
            new AssertionError(
                reading.problems().stream().map(Problem::message).toList().toString()));
  }
}
