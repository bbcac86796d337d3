package keenward.endtoend.docs;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import keenward.cli.Main;
import keenward.cli.command.Surroundings;
import keenward.endtoend.Finished;
import keenward.endtoend.Repository;
import picocli.CommandLine;

/** The program without a process of its own, on a fixed day. */
final class Program {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

  private Program() {}

  static CommandLine commandLine() {
    return commandLine(new StringWriter(), new StringWriter());
  }

  static Finished run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exitCode = commandLine(out, err).execute(arguments);
    return new Finished(exitCode, out.toString(), err.toString());
  }

  private static CommandLine commandLine(StringWriter out, StringWriter err) {
    return Main.commandLine(
        new Surroundings(
            Repository.root(), "0.1.0", CLOCK, new PrintWriter(out), new PrintWriter(err), false));
  }
}
