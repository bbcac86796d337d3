package keenward.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The invented sites that ship. */
final class DemoSites {

  private DemoSites() {}

  static List<Path> in(Path home) {
    try (Stream<Path> files =
        Files.find(
            home.resolve("demo"),
            2,
            (path, attributes) -> path.toString().endsWith(".site.yaml"))) {
      return files.sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
