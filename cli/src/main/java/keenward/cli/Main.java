package keenward.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Where the program starts. */
@Command(
    name = "keenward",
    description = "Does an intruder-alarm technician's whole job from one site plan.",
    versionProvider = Version.class,
    mixinStandardHelpOptions = true)
public final class Main implements Runnable {

  /** Runs the command named by {@code arguments} and ends the process with its exit code. */
  public static void main(String[] arguments) {
    System.exit(commandLine().execute(arguments));
  }

  static CommandLine commandLine() {
    return new CommandLine(new Main())
        .setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8))
        .setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
  }

  @Override
  public void run() {
    CommandLine.usage(this, System.out);
  }
}
