package keenward.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import keenward.usecases.job.Keenward;
import keenward.usecases.panel.PanelFinder;

/**
 * What a command needs of the machine it runs on.
 *
 * @param home folder of the program, which holds panels and demo
 * @param version version of the program
 * @param clock where today comes from
 * @param out where results go
 * @param err where errors and progress go
 * @param atTerminal whether somebody watches the progress
 */
public record Surroundings(
    Path home, String version, Clock clock, PrintWriter out, PrintWriter err, boolean atTerminal) {

  /** The use cases. */
  Keenward keenward() {
    return new Keenward(new PanelFinder(home.resolve("panels")), version);
  }

  /** Today, here. */
  LocalDate today() {
    return LocalDate.now(clock);
  }
}
