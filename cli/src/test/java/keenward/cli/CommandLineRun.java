package keenward.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import keenward.cli.command.Surroundings;

/**
 * What one command printed.
 *
 * @param exitCode how it ended
 * @param out its result
 * @param err its errors
 */
record CommandLineRun(int exitCode, String out, String err) {

  static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  static final Path BAKERY = HOME.resolve("demo/bakery/quayside-bakery.site.yaml");
  static final Path BOATHOUSE = HOME.resolve("demo/boathouse/weir-lane-boathouse.site.yaml");
  static final Path CLINIC = HOME.resolve("demo/clinic/heron-lane-vets.site.yaml");

  static CommandLineRun of(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Clock clock = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);
    int exitCode =
        Main.commandLine(
                new Surroundings(
                    HOME, "0.1.0", clock, new PrintWriter(out), new PrintWriter(err), false))
            .execute(arguments);
    return new CommandLineRun(exitCode, out.toString(), err.toString());
  }
}
