package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.CoverageText;
import keenward.usecases.coverage.SiteCoverage;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows what the motion detectors see of each room, and where a person can stand unseen. */
@Command(
    name = "coverage",
    description =
        "Shows what the motion detectors see of each room, and where a person can stand unseen.",
    mixinStandardHelpOptions = true)
public final class CoverageCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final FloorChoice choice = new FloorChoice();

  /** The command in its surroundings. */
  public CoverageCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteCoverage coverage = SiteCoverage.of(SiteFiles.load(site));
    surroundings
        .out()
        .print(
            switch (choice.format) {
              case text -> CoverageText.of(coverage);
              case json -> Json.coverage(coverage);
              case svg -> coverage.svg(choice.floor);
            });
    return Exit.FINE;
  }
}
