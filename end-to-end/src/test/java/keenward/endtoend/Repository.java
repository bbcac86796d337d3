package keenward.endtoend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Where the files of the repository are; the build says it by the property `keenward.root`. */
public final class Repository {

  private Repository() {}

  /** The folder that holds everything. */
  public static Path root() {
    return Path.of(
        Objects.requireNonNull(
            System.getProperty("keenward.root"),
            "run by Maven, which sets the property keenward.root, or set it to the repository"));
  }

  /** The folder of each Maven module of the program; benchmarks are no part of it. */
  public static List<Path> modules() throws IOException {
    try (Stream<Path> entries = Files.list(root())) {
      return entries
          .filter(entry -> Files.exists(entry.resolve("pom.xml")))
          .filter(entry -> !entry.endsWith("benchmarks"))
          .sorted()
          .toList();
    }
  }

  /** The folder that each module builds in, relative to the module. */
  public static Path buildFolder() {
    return Path.of(Objects.requireNonNullElse(System.getProperty("build.folder"), "target"));
  }
}
