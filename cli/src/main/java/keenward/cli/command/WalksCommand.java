package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.WalksText;
import keenward.usecases.job.JobOptions;
import keenward.usecases.job.Keenward;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import keenward.usecases.walks.TimedWalks;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Times the walks between doors, keypads and bedrooms, and says who sees the walker. */
@Command(
    name = "walks",
    description =
        "Times the walks between doors, keypads and bedrooms, and says which zones see the walker.",
    mixinStandardHelpOptions = true)
public final class WalksCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final FloorChoice choice = new FloorChoice();

  @ArgGroup(exclusive = false)
  @Nullable Ends ends;

  /** A walk that is asked for. */
  static final class Ends {
    @Option(
        names = "--from",
        required = true,
        paramLabel = "PLACE",
        description = "Where a single walk begins: the name of an opening, a device or a room.")
    String from = "";

    @Option(names = "--to", required = true, paramLabel = "PLACE", description = "Where it ends.")
    String to = "";
  }

  /** The command in its surroundings. */
  public WalksCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteFile file = SiteFiles.load(site);
    Keenward keenward = surroundings.keenward();
    JobOptions options = new JobChoices().options(surroundings);
    Ends asked = ends;
    TimedWalks walks =
        asked == null
            ? keenward.walks(file, options)
            : keenward.walk(file, asked.from, asked.to, options);
    surroundings
        .out()
        .print(
            switch (choice.format) {
              case text -> WalksText.of(walks);
              case json -> Json.walks(walks);
              case svg -> walks.svg(choice.floor);
            });
    return Exit.FINE;
  }
}
