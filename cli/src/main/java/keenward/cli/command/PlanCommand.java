package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.text.PlanText;
import keenward.core.plan.Settings;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Groups the commands about the plan itself. */
@Command(
    name = "plan",
    description = "Shows a site plan as the program understood it.",
    mixinStandardHelpOptions = true)
public final class PlanCommand {

  private PlanCommand() {}

  /** The group, with its commands. */
  public static CommandLine create(Surroundings surroundings) {
    return new CommandLine(new PlanCommand()).addSubcommand(new Show(surroundings));
  }

  /** Shows the plan. */
  @Command(
      name = "show",
      description = "Shows zones and settings in force.",
      mixinStandardHelpOptions = true)
  static final class Show implements Callable<Integer> {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
    Path site = Path.of("");

    @Option(
        names = "--with-defaults",
        description =
            "Also the settings that the plan leaves open, each with where its value came from.")
    boolean withDefaults;

    @Option(
        names = "--panel",
        paramLabel = "NAME|FILE",
        description = "A panel description that stands in for the plan's own.")
    @Nullable String panel;

    Show(Surroundings surroundings) {
      this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws BadInput {
      SiteFile file = SiteFiles.load(site);
      Settings settings =
          Settings.of(file.plan(), surroundings.keenward().panel(file, panel).defaults());
      surroundings.out().print(PlanText.of(file, settings, withDefaults));
      return Exit.FINE;
    }
  }
}
