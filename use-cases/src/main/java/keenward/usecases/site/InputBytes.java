package keenward.usecases.site;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Reads a whole input file, never more than a program can be expected to hold. */
public final class InputBytes {

  /**
   * More than any file format here allows, so that the format's own reader says what is too long.
   */
  private static final int MOST_BYTES = 8 * 1024 * 1024;

  private InputBytes() {}

  /**
   * The bytes of a file, at most eight mebibytes of them.
   *
   * @param what what the file should be, in words
   */
  public static byte[] read(Path path, String what) throws BadInput {
    return start(path, what, MOST_BYTES);
  }

  /**
   * The bytes of a file that may be larger.
   *
   * @param what what the file should be, in words
   * @throws BadInput also when it has more than so many bytes
   */
  public static byte[] read(Path path, String what, int mostBytes) throws BadInput {
    byte[] bytes = start(path, what, mostBytes + 1);
    if (bytes.length > mostBytes) {
      throw new BadInput(
          path.toString(),
          "the file is larger than " + mostBytes / (1024 * 1024) + " MiB",
          what,
          "save it smaller");
    }
    return bytes;
  }

  private static byte[] start(Path path, String what, int bytes) throws BadInput {
    if (Files.isDirectory(path)) {
      throw new BadInput(path.toString(), "this is a folder", what, "name a file in it");
    }
    try (InputStream stream = Files.newInputStream(path)) {
      return stream.readNBytes(bytes);
    } catch (NoSuchFileException missing) {
      throw new BadInput(path.toString(), "there is no such file", what, "check name and folder");
    } catch (IOException failure) {
      throw new BadInput(
          path.toString(), "the file cannot be read", what, "check that you may read it");
    }
  }

  /** SHA-256 (FIPS 180-4) in lower-case hexadecimal digits. */
  public static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }
}
