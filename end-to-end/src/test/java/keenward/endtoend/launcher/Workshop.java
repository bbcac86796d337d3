package keenward.endtoend.launcher;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import keenward.endtoend.Finished;
import keenward.endtoend.Repository;
import keenward.endtoend.Running;

/**
 * A folder that holds the launcher and little else, with a stand-in for Maven that counts how often
 * it runs and delivers a small program that tells how it was called.
 */
final class Workshop {

  private static final String MAVEN =
      """
      #!/bin/bash
      echo run >>"$WORKSHOP/maven-runs"
      echo "[INFO] Building Keenward core 0.1.0  [1/2]"
      built=$WORKSHOP_ROOT/cli/target/launcher
      mkdir -p "$built/libraries"
      cp "$WORKSHOP/program.jar" "$built/keenward-cli-0.1.0.jar.part"
      [ ! -e "$WORKSHOP/slow" ] || sleep 2
      if [ -e "$WORKSHOP/broken" ]; then
        echo "[ERROR] a made-up failure"
        exit 1
      fi
      mv "$built/keenward-cli-0.1.0.jar.part" "$built/keenward-cli-0.1.0.jar"
      cp "$WORKSHOP/library.jar" "$built/libraries/a-library.jar"
      """;

  private final Path around;
  private final Path root;
  private Path tools;

  /** Sets up {@code around}/{@code name} as the folder that Keenward was put in. */
  Workshop(Path around, String name) throws IOException {
    this.around = around;
    this.root = around.resolve(name);
    this.tools = Files.createDirectories(around.resolve("tools"));
    copy("keenward");
    copy(".mvn/find-jdk.sh");
    write(root.resolve("pom.xml"), "<project/>");
    write(root.resolve("cli/pom.xml"), "<project/>");
    write(root.resolve("cli/src/main/java/Main.java"), "");
    write(tools.resolve("mvn"), MAVEN);
    makeExecutable(tools.resolve("mvn"));
    deliverEdition("1");
    age(root);
  }

  /** From now on Maven delivers a program that tells this edition. */
  void deliverEdition(String edition) throws IOException {
    byte[] text = edition.getBytes(StandardCharsets.UTF_8);
    writeJar(
        "program.jar",
        Map.of("keenward/cli/Main.class", StandIn.COMPILED, "keenward/cli/edition.txt", text));
    writeJar("library.jar", Map.of("any.txt", text));
  }

  void buildsSlowly() throws IOException {
    write(around.resolve("slow"), "");
  }

  void buildsBadly(boolean badly) throws IOException {
    if (badly) {
      write(around.resolve("broken"), "");
    } else {
      Files.delete(around.resolve("broken"));
    }
  }

  void changeASource() throws IOException {
    write(root.resolve("cli/src/main/java/Main.java"), "// changed");
    Files.setLastModifiedTime(
        root.resolve("cli/src/main/java/Main.java"), FileTime.from(Instant.now().plusSeconds(2)));
  }

  /** Hides the program `flock`, as on machines that have none. */
  void hideFlock() throws IOException {
    Path only = Files.createDirectories(around.resolve("only"));
    List<String> names =
        List.of(
            "bash",
            "cat",
            "cp",
            "cut",
            "dirname",
            "env",
            "find",
            "ls",
            "mkdir",
            "mv",
            "readlink",
            "rm",
            "rmdir",
            "sed",
            "sha256sum",
            "sleep",
            "tail");
    for (String name : names) {
      Path program = Path.of("/usr/bin", name);
      Files.createSymbolicLink(
          only.resolve(name), Files.exists(program) ? program : Path.of("/bin", name));
    }
    Files.copy(tools.resolve("mvn"), only.resolve("mvn"), StandardCopyOption.COPY_ATTRIBUTES);
    tools = only;
  }

  int mavenRuns() throws IOException {
    Path runs = around.resolve("maven-runs");
    return Files.exists(runs) ? Files.readAllLines(runs).size() : 0;
  }

  Path root() {
    return root;
  }

  Path launcher() {
    return root.resolve("keenward");
  }

  Finished run(String... arguments) throws IOException, InterruptedException {
    try (Running running = start(arguments)) {
      return running.finish();
    }
  }

  Running start(String... arguments) throws IOException {
    return start(launcher(), arguments);
  }

  Running start(Path launcher, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of("/bin/bash", launcher.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(around.toFile());
    boolean hidden = tools.endsWith("only");
    builder
        .environment()
        .put("PATH", hidden ? tools.toString() : tools + ":" + System.getenv("PATH"));
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("WORKSHOP", around.toString());
    builder.environment().put("WORKSHOP_ROOT", root.toString());
    builder.environment().put("LC_ALL", "C");
    builder.environment().remove("KEENWARD_REBUILD");
    return Running.start(builder);
  }

  private void copy(String name) throws IOException {
    Path target = root.resolve(name);
    Files.createDirectories(Objects.requireNonNull(target.getParent()));
    Files.copy(Repository.root().resolve(name), target, StandardCopyOption.COPY_ATTRIBUTES);
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(Objects.requireNonNull(file.getParent()));
    Files.writeString(file, text);
  }

  private static void makeExecutable(Path file) {
    if (!file.toFile().setExecutable(true)) {
      throw new IllegalStateException("cannot make " + file + " executable");
    }
  }

  private static void age(Path folder) throws IOException {
    FileTime anHourAgo = FileTime.from(Instant.now().minusSeconds(3600));
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.toList()) {
        Files.setLastModifiedTime(file, anHourAgo);
      }
    }
  }

  private void writeJar(String name, Map<String, byte[]> entries) throws IOException {
    try (OutputStream stream = Files.newOutputStream(around.resolve(name));
        JarOutputStream jar = new JarOutputStream(stream)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        jar.putNextEntry(new JarEntry(entry.getKey()));
        jar.write(entry.getValue());
        jar.closeEntry();
      }
    }
  }
}
