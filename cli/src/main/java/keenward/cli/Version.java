package keenward.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The program's version, written into the jar by the build. */
final class Version implements IVersionProvider {

  static String text() {
    try (InputStream stream =
        Objects.requireNonNull(Version.class.getResourceAsStream("version.txt"))) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  public String[] getVersion() {
    return new String[] {"keenward " + text()};
  }
}
