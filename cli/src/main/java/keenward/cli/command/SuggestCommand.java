package keenward.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.SuggestionText;
import keenward.core.building.placing.Wish;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFiles;
import keenward.usecases.suggest.SiteSuggestion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Proposes places for motion detectors and keypads: a starting point for whoever surveys. */
@Command(
    name = "suggest",
    description =
        "Proposes the fewest motion detectors that see enough of the rooms, and for keypads the place of least delay:"
            + " a starting point for whoever surveys the site.",
    mixinStandardHelpOptions = true)
public final class SuggestCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final FloorChoice choice = new FloorChoice();

  @Option(
      names = "--cover",
      paramLabel = "PERCENT",
      description = "How much of the floor of each room is to be seen (default: ${DEFAULT-VALUE}).")
  int cover = 85;

  @Option(
      names = "--seen-by",
      paramLabel = "1|2",
      description = "By how many detectors (default: ${DEFAULT-VALUE}).")
  int seenBy = 1;

  @Option(
      names = "--room",
      paramLabel = "ROOM",
      description =
          "A room to watch; may be given again. Otherwise all into which one comes from outside, targets, and halls,"
              + " landings and stairs.")
  List<String> rooms = new ArrayList<>();

  @Option(
      names = "--type",
      paramLabel = "TYPE",
      description =
          "A device type of the plan to choose from; may be given again. Otherwise all motion detectors that say what"
              + " they see.")
  List<String> types = new ArrayList<>();

  @Option(
      names = "--afresh",
      description = "Leaves the motion detectors of the plan aside, instead of adding to them.")
  boolean afresh;

  /** The command in its surroundings. */
  public SuggestCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    if (cover < 1 || cover > 100) {
      throw new BadInput(
          "--cover",
          cover + " is no share of a floor",
          "a whole number from 1 to 100",
          "such as 85");
    }
    if (seenBy < 1 || seenBy > 2) {
      throw new BadInput("--seen-by", seenBy + " detectors are not counted", "1 or 2", "such as 2");
    }
    SiteSuggestion suggestion;
    try (ProgressLine progress = new ProgressLine(surroundings)) {
      suggestion =
          surroundings
              .keenward()
              .suggest(
                  SiteFiles.load(site),
                  new Wish(cover / 100.0, seenBy, rooms, types, afresh),
                  new JobChoices().options(surroundings),
                  progress);
    }
    surroundings
        .out()
        .print(
            switch (choice.format) {
              case text -> SuggestionText.of(suggestion);
              case json -> Json.suggestion(suggestion);
              case svg -> suggestion.svg(choice.floor);
            });
    return Exit.FINE;
  }
}
