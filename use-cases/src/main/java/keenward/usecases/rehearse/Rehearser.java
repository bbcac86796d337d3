package keenward.usecases.rehearse;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.plan.Settings;
import keenward.core.progress.Progress;
import keenward.core.rehearsal.planned.PlannedSystem;
import keenward.core.rehearsal.planned.StandardScenario;
import keenward.core.rehearsal.planned.StandardScenarios;
import keenward.core.rehearsal.planned.SystemModels;
import keenward.core.rehearsal.scenario.ParsedScript;
import keenward.core.rehearsal.scenario.Rehearsal;
import keenward.core.rehearsal.scenario.Script;
import keenward.core.rehearsal.scenario.ScriptParser;
import keenward.files.Problem;
import keenward.usecases.panel.PanelInUse;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.InputBytes;
import keenward.usecases.site.SiteFile;

/** Runs the planned system of a site. */
public final class Rehearser {

  private Rehearser() {}

  /** The scenarios worth seeing on this site. */
  public static SiteRehearsal standard(
      SiteFile site, PanelInUse panel, Building building, Progress progress) {
    PlannedSystem system = system(site, panel);
    StandardScenarios.Suggested suggested = StandardScenarios.of(site.plan(), system, building);
    List<StandardScenario> scenarios = suggested.scenarios();
    List<RehearsedScenario> rehearsed = new ArrayList<>();
    for (StandardScenario scenario : scenarios) {
      progress.check("rehearsing", rehearsed.size(), scenarios.size());
      Script script =
          ScriptParser.parse(scenario.script(), system.model())
              .script()
              .orElseThrow(
                  () -> new IllegalStateException("our own script is wrong: " + scenario.name()));
      rehearsed.add(
          new RehearsedScenario(
              scenario.name(),
              scenario.reason(),
              scenario.script(),
              Rehearsal.run(system.model(), script)));
    }
    return new SiteRehearsal(system.assuming(suggested.notRehearsed()), rehearsed);
  }

  /**
   * Somebody's own script.
   *
   * @throws BadInput with every mistake of the script
   */
  public static SiteRehearsal script(SiteFile site, PanelInUse panel, Path file) throws BadInput {
    String text = new String(InputBytes.read(file, "a scenario script"), StandardCharsets.UTF_8);
    PlannedSystem system = system(site, panel);
    ParsedScript parsed = ScriptParser.parse(text, system.model());
    Optional<Script> script = parsed.script();
    if (script.isEmpty()) {
      throw new BadInput(
          parsed.problems().stream()
              .map(mistake ->
                  new Problem(
                      file.toString(),
                      mistake.line(),
                      mistake.column(),
                      mistake.what(),
                      mistake.expected(),
                      "see docs/reference/scenario-script.md"))
              .toList());
    }
    Path name = file.getFileName();
    return new SiteRehearsal(
        system,
        List.of(
            new RehearsedScenario(
                name == null ? "script" : name.toString(),
                "",
                text,
                Rehearsal.run(system.model(), script.get()))));
  }

  private static PlannedSystem system(SiteFile site, PanelInUse panel) {
    return SystemModels.from(site.plan(), Settings.of(site.plan(), panel.defaults()));
  }
}
