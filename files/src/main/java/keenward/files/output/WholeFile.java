package keenward.files.output;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** Writes a file whole or not at all. */
public final class WholeFile {

  private WholeFile() {}

  /**
   * Writes a file, by way of one beside it that then takes its name.
   *
   * @param replace whether a file that stands there may be replaced
   * @throws FileAlreadyExistsException when one stands there and may not be replaced
   * @throws IOException when it cannot be written; a former file stands then
   */
  public static void write(Path file, byte[] bytes, boolean replace) throws IOException {
    Path target = file.toAbsolutePath();
    Path folder = Optional.ofNullable(target.getParent()).orElse(target);
    Files.createDirectories(folder);
    if (!replace && Files.exists(target)) {
      throw new FileAlreadyExistsException(file.toString());
    }
    Path fresh = Files.createTempFile(folder, ".keenward-", ".new");
    try {
      Files.write(fresh, bytes);
      if (replace) {
        Files.move(
            fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } else {
        // A link fails where a file has come up since, a move would replace it.
        Files.createLink(target, fresh);
      }
    } finally {
      Files.deleteIfExists(fresh);
    }
  }
}
