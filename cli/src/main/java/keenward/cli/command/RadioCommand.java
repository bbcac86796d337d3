package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.RadioText;
import keenward.usecases.radio.SiteRadio;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Reckons how radio devices are heard, and where a receiver or repeater would hear best. */
@Command(
    name = "radio",
    description =
        "Reckons how radio devices are heard, and where a receiver or repeater would hear best.",
    mixinStandardHelpOptions = true)
public final class RadioCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final FloorChoice choice = new FloorChoice();

  /** The command in its surroundings. */
  public RadioCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteRadio radio =
        surroundings.keenward().radio(SiteFiles.load(site), new JobChoices().options(surroundings));
    surroundings
        .out()
        .print(
            switch (choice.format) {
              case text -> RadioText.of(radio);
              case json -> Json.radio(radio);
              case svg -> radio.svg(choice.floor);
            });
    return Exit.FINE;
  }
}
