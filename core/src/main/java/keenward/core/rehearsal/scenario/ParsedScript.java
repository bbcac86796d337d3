package keenward.core.rehearsal.scenario;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a script: the script, or every mistake in it.
 *
 * @param script the script; empty when there are mistakes
 * @param problems the mistakes, a line at most one
 */
public record ParsedScript(Optional<Script> script, List<ScriptProblem> problems) {

  public ParsedScript {
    problems = List.copyOf(problems);
  }
}
