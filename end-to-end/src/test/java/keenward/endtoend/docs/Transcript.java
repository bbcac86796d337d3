package keenward.endtoend.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import keenward.endtoend.Finished;
import keenward.endtoend.Repository;
import keenward.endtoend.Running;

/**
 * Does what a page tells a reader to do, in a folder that looks like the repository: files are
 * written, command lines are run by a shell as they stand, and each line of a `text` block must
 * come out of the command lines of the `sh` block before it.
 */
final class Transcript implements AutoCloseable {

  private static final String SHELL = "/bin/bash";
  private static final List<String> LINKED = List.of("keenward", "demo");

  private final Path folder;
  private final Set<String> leftOut;
  private String printed = "";
  private int commandsRun;

  /**
   * A reader in {@code folder}.
   *
   * @param leftOut command lines that don't end by themselves or take minutes
   */
  Transcript(Path folder, Set<String> leftOut) throws IOException {
    this.folder = folder;
    this.leftOut = leftOut;
    for (String name : LINKED) {
      Files.createSymbolicLink(folder.resolve(name), Repository.root().resolve(name));
    }
  }

  /** Follows {@code page} from its beginning. */
  void follow(Path page) throws IOException, InterruptedException {
    for (Block block : Block.in(Files.readString(page))) {
      String where = page.getFileName() + ":" + block.line();
      switch (block.use()) {
        case FILE -> Files.writeString(folder.resolve(block.file()), block.text());
        case ADD ->
            Files.writeString(
                folder.resolve(block.file()), block.text(), StandardOpenOption.APPEND);
        case SHOWN -> read(where, block);
      }
    }
  }

  /** Takes the links to the repository out of the folder; what was made in it stays. */
  @Override
  public void close() throws IOException {
    for (String name : LINKED) {
      Files.delete(folder.resolve(name));
    }
  }

  int commandsRun() {
    return commandsRun;
  }

  private void read(String where, Block block) throws IOException, InterruptedException {
    switch (block.language()) {
      case "sh" -> {
        StringBuilder all = new StringBuilder();
        for (String line : block.text().lines().toList()) {
          String command = line.replaceFirst(" +# .*", "");
          if (!leftOut.contains(command)) {
            all.append(run(where, command));
          }
        }
        printed = squeeze(all.toString());
      }
      case "text" -> {
        for (String line : block.text().lines().toList()) {
          assertThat(printed).as("%s: %s", where, line).contains(squeeze(line));
        }
      }
      default -> throw new AssertionError(where + ": nobody knows how to read " + block.language());
    }
  }

  private String run(String where, String command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(SHELL, "-c", command).directory(folder.toFile());
    builder.environment().put("KEENWARD_REBUILD", "yes");
    try (Running running = Running.start(builder)) {
      Finished finished = running.finish();
      assertThat(finished.exitCode())
          .as("%s: %s%n%s", where, command, finished.errors())
          .isIn(0, 1);
      commandsRun++;
      return finished.output();
    }
  }

  /** Without the spaces that only line things up. */
  private static String squeeze(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
