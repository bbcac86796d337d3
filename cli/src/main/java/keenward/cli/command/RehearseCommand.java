package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.RehearsalText;
import keenward.core.building.Building;
import keenward.core.progress.Progress;
import keenward.usecases.panel.PanelInUse;
import keenward.usecases.rehearse.Rehearser;
import keenward.usecases.rehearse.SiteRehearsal;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows what the planned system will do, with the reason of each event. */
@Command(
    name = "rehearse",
    description = "Shows what the planned system will do, with the reason of each event.",
    mixinStandardHelpOptions = true)
public final class RehearseCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(index = "0", paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final JobChoices choices = new JobChoices();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SCRIPT",
      description = "A scenario script; without one, the scenarios worth seeing.")
  @Nullable Path script;

  /** The command in its surroundings. */
  public RehearseCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteFile file = SiteFiles.load(site);
    PanelInUse panel = surroundings.keenward().panel(file, choices.options(surroundings));
    SiteRehearsal rehearsal =
        script == null
            ? Rehearser.standard(file, panel, Building.of(file.plan()), Progress.SILENT)
            : Rehearser.script(file, panel, script);
    surroundings
        .out()
        .print(
            choices.json() ? Json.rehearsal(file, rehearsal) : RehearsalText.of(file, rehearsal));
    boolean met =
        rehearsal.scenarios().stream().allMatch(scenario -> scenario.result().unmet().isEmpty());
    return met ? Exit.FINE : Exit.FINDINGS;
  }
}
