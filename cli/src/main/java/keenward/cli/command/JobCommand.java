package keenward.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import keenward.usecases.pack.Sheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * The whole job: checks, sums, rehearsal, order, test plan and papers of each site, in a folder
 * each.
 */
@Command(
    name = "job",
    aliases = "papers",
    description = {
      "Does the whole job for each site: checks, sums, rehearsal, order, test plan, papers; a folder each.",
      "`papers` is the same command."
    },
    mixinStandardHelpOptions = true)
public final class JobCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", arity = "1..*", description = "Site plans (*.site.yaml).")
  List<Path> sites = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description = "The folder that gets a folder for each site.")
  Path out = Path.of("out");

  @Option(
      names = "--paper",
      paramLabel = "A4|LETTER",
      description = "Size of the pack (default: ${DEFAULT-VALUE}).")
  Sheet size = Sheet.A4;

  @Mixin final JobChoices choices = new JobChoices();

  /** The command in its surroundings. */
  public JobCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    return new Jobs(surroundings)
        .run(sites, choices.options(surroundings), out, size, choices.json());
  }
}
