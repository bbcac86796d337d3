package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.CheckText;
import keenward.core.rules.CheckResult;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says what is wrong with a site plan, worst first. */
@Command(
    name = "check",
    description = "Says what is wrong with a site plan, worst first.",
    mixinStandardHelpOptions = true)
public final class CheckCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final JobChoices choices = new JobChoices();

  /** The command in its surroundings. */
  public CheckCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteFile file = SiteFiles.load(site);
    CheckResult result = surroundings.keenward().check(file, choices.options(surroundings));
    surroundings
        .out()
        .print(choices.json() ? Json.check(file, result) : CheckText.of(file, result));
    return result.hasErrors() ? Exit.FINDINGS : Exit.FINE;
  }
}
