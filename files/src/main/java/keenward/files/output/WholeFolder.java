package keenward.files.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * Replaces a folder of results as a whole: what stands under its name is the former content or the
 * new one, never a mixture. Two programs that write the same folder take turns. What a killed
 * program leaves behind is put right by the next one.
 */
public final class WholeFolder {

  /** Fills an empty folder. */
  @FunctionalInterface
  public interface Filler {
    /**
     * Writes every file below {@code folder}.
     *
     * @throws IOException when a file cannot be written; nothing is replaced then
     */
    void fill(Path folder) throws IOException;
  }

  /** Names a folder as one that this program made, so that nobody's own files are ever removed. */
  static final String MARK = ".keenward-results";

  private WholeFolder() {}

  /**
   * Replaces {@code parent/name} by what the filler writes.
   *
   * @throws IOException when something cannot be written, or when the folder holds what this
   *     program did not write
   */
  // The lock is held, not used.
  @SuppressWarnings("try")
  // One process may not hold a file lock twice, so its threads take turns here first.
  public static synchronized Path replace(Path parent, String name, Filler filler)
      throws IOException {
    Files.createDirectories(parent);
    Path folder = parent.resolve(name);
    try (FileChannel channel =
            FileChannel.open(
                parent.resolve("." + name + ".lock"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE);
        FileLock _ = channel.lock()) {
      swap(
          folder, parent.resolve("." + name + ".new"), parent.resolve("." + name + ".old"), filler);
    }
    return folder;
  }

  private static void swap(Path folder, Path fresh, Path former, Filler filler) throws IOException {
    if (!Files.exists(folder) && Files.exists(former)) {
      Files.move(former, folder, StandardCopyOption.ATOMIC_MOVE);
    }
    refuseForeign(folder);
    remove(fresh);
    remove(former);
    Files.createDirectory(fresh);
    Files.writeString(fresh.resolve(MARK), "Written by Keenward; replaced as a whole.\n");
    boolean filled = false;
    try {
      filler.fill(fresh);
      filled = true;
    } finally {
      if (!filled) {
        remove(fresh);
      }
    }
    if (Files.exists(folder)) {
      Files.move(folder, former, StandardCopyOption.ATOMIC_MOVE);
    }
    Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
    remove(former);
  }

  private static void refuseForeign(Path folder) throws IOException {
    if (!Files.exists(folder) || Files.exists(folder.resolve(MARK))) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw new IOException(folder + " is a file: name another folder for the results");
    }
    try (var content = Files.list(folder)) {
      if (content.findAny().isPresent()) {
        throw new IOException(
            folder
                + " holds files that Keenward did not write: name another folder for the results");
      }
    }
  }

  private static void remove(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(
              Path visited, @org.jspecify.annotations.Nullable IOException failure)
              throws IOException {
            if (failure != null) {
              throw failure;
            }
            Files.delete(visited);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
