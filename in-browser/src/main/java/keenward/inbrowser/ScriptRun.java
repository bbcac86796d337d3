package keenward.inbrowser;

import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.scenario.ParsedScript;
import keenward.core.rehearsal.scenario.Rehearsal;
import keenward.core.rehearsal.scenario.Script;
import keenward.core.rehearsal.scenario.ScriptParser;
import keenward.core.rehearsal.scenario.ScriptProblem;
import keenward.core.rehearsal.scenario.Unmet;

/** Plays a scenario script and writes what came of it. */
final class ScriptRun {

  private ScriptRun() {}

  /**
   * The timeline, then a line for each expectation that was not met; or only a line for each
   * mistake in the script, as `LINE:COLUMN: what; expected ...`.
   */
  static String play(SystemModel model, String text) {
    ParsedScript parsed = ScriptParser.parse(text, model);
    return parsed.script().map(script -> played(model, script)).orElseGet(() -> mistakes(parsed));
  }

  private static String played(SystemModel model, Script script) {
    Rehearsal.Result result = Rehearsal.run(model, script);
    StringBuilder told = new StringBuilder(result.timeline().text(true));
    for (Unmet unmet : result.unmet()) {
      told.append(unmet.text()).append('\n');
    }
    return told.toString();
  }

  private static String mistakes(ParsedScript parsed) {
    StringBuilder told = new StringBuilder();
    for (ScriptProblem problem : parsed.problems()) {
      told.append(problem.text()).append('\n');
    }
    return told.toString();
  }
}
