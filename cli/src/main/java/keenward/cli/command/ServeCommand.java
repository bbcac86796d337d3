package keenward.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Serves the workbench until it is stopped. */
@Command(
    name = "serve",
    description =
        "Shows the sites in the browser, on this machine only, until stopped with Control-C.",
    mixinStandardHelpOptions = true)
public final class ServeCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(
      paramLabel = "SITE",
      arity = "0..*",
      description = "Site plans (default: the demo sites).")
  List<Path> sites = List.of();

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Port on 127.0.0.1 (default: a free one).")
  int port;

  /** The command in its surroundings. */
  public ServeCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    return Serving.serve(
        surroundings, sites.isEmpty() ? DemoSites.in(surroundings.home()) : sites, port);
  }
}
