package keenward.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares a text with a file of the project; {@code -Dgolden=renew} writes the file instead. */
public final class Golden {

  private Golden() {}

  /** Fails unless the file holds this text; the path counts from the module's folder. */
  public static void assertSame(Path file, String text) {
    try {
      if ("renew".equals(System.getProperty("golden"))) {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, text, UTF_8);
      }
      String kept = Files.exists(file) ? Files.readString(file, UTF_8) : "";
      assertThat(text)
          .as("%s; renew with -Dgolden=renew and read the difference", file)
          .isEqualTo(kept);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
