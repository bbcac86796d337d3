package keenward.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import keenward.usecases.job.JobOptions;
import keenward.usecases.pack.Sheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The main job on the demo sites, then the workbench. */
@Command(
    name = "demo",
    description = "Does the whole job on the invented demo sites, then serves the workbench.",
    mixinStandardHelpOptions = true)
public final class DemoCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Option(names = "--no-serve", description = "Stop after the summary.")
  boolean noServe;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the results go (default: out/demo in the program's folder).")
  Path out = Path.of("");

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Port on 127.0.0.1 (default: a free one).")
  int port;

  /** The command in its surroundings. */
  public DemoCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    List<Path> sites = DemoSites.in(surroundings.home());
    Path folder =
        out.toString().isEmpty() ? surroundings.home().resolve("out").resolve("demo") : out;
    int result =
        new Jobs(surroundings)
            .run(sites, JobOptions.on(surroundings.today()), folder, Sheet.A4, false);
    if (result == Exit.BAD_INPUT) {
      return result;
    }
    surroundings
        .out()
        .println("\nThe faults above are deliberate; the tour in README.md goes through them.");
    surroundings.out().flush();
    return noServe ? Exit.FINE : Serving.serve(surroundings, sites, port);
  }
}
