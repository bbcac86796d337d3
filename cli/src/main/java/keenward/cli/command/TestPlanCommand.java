package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.TestPlanText;
import keenward.core.proof.TestPlan;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists what to test on site, and what keypad and centre must show. */
@Command(
    name = "testplan",
    description = "Lists what to test on site, and what keypad and centre must show.",
    mixinStandardHelpOptions = true)
public final class TestPlanCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final JobChoices choices = new JobChoices();

  /** The command in its surroundings. */
  public TestPlanCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteFile file = SiteFiles.load(site);
    TestPlan plan =
        TestPlan.of(
            file.plan(),
            surroundings.keenward().panel(file, choices.options(surroundings)).defaults());
    surroundings
        .out()
        .print(choices.json() ? Json.testPlan(file, plan) : TestPlanText.of(file, plan));
    return Exit.FINE;
  }
}
