package keenward.cli.command;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.PowerText;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.outage.Outages;
import keenward.core.plan.Settings;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows the sums of supplies, batteries and cables, every line. */
@Command(
    name = "power",
    description = "Shows the sums of supplies, batteries and cables, every line.",
    mixinStandardHelpOptions = true)
public final class PowerCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final JobChoices choices = new JobChoices();

  /** The command in its surroundings. */
  public PowerCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteFile file = SiteFiles.load(site);
    PowerAssessment power = PowerAssessment.of(file.plan());
    Outages outages = Outages.of(file.plan(), Settings.of(file.plan(), Map.of()), power);
    surroundings
        .out()
        .print(
            choices.json() ? Json.power(file, power, outages) : PowerText.of(file, power, outages));
    return Exit.FINE;
  }
}
