package keenward.usecases.site;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import keenward.files.output.WholeFile;

/** Writes a file that a person named, whole or not at all. */
public final class OutputFile {

  private OutputFile() {}

  /**
   * Writes a file.
   *
   * @param replace whether a file that stands there may be replaced
   * @throws BadInput when one stands there and may not be replaced
   * @throws IOException when it cannot be written; a former file stands then
   */
  public static void write(Path file, byte[] bytes, boolean replace) throws BadInput, IOException {
    try {
      WholeFile.write(file, bytes, replace);
    } catch (FileAlreadyExistsException there) {
      throw new BadInput(
          file.toString(),
          "there is a file already",
          "a new name",
          "name another, or say --replace");
    }
  }
}
