package keenward.endtoend;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The program as a person starts it: by the launcher, which builds it first when it is older than
 * its sources.
 */
public final class Keenward {

  private Keenward() {}

  /** Runs `keenward` with {@code arguments} in {@code folder}, to its end. */
  public static Finished run(Path folder, String... arguments)
      throws IOException, InterruptedException {
    try (Running running = start(folder, arguments)) {
      return running.finish();
    }
  }

  /** Starts `keenward` with {@code arguments} in {@code folder}. */
  public static Running start(Path folder, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Repository.root().resolve("keenward").toString());
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().put("KEENWARD_REBUILD", "yes");
    return Running.start(builder);
  }
}
