package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.WiringText;
import keenward.core.electrical.PowerAssessment;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what each cable carries, the voltage at each device, and what lifts it where it is low. */
@Command(
    name = "wiring",
    description =
        "Shows what each cable carries, the voltage at each device, and what lifts it where it is low.",
    mixinStandardHelpOptions = true)
public final class WiringCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "How to print the result (default: ${DEFAULT-VALUE}).")
  Format format = Format.text;

  /** The command in its surroundings. */
  public WiringCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteFile file = SiteFiles.load(site);
    PowerAssessment power = PowerAssessment.of(file.plan());
    surroundings
        .out()
        .print(format == Format.json ? Json.wiring(file, power) : WiringText.of(file, power));
    return Exit.FINE;
  }
}
