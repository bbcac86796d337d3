package keenward.usecases.rehearse;

import keenward.core.rehearsal.scenario.Rehearsal;

/**
 * A scenario and what came of it.
 *
 * @param name its name
 * @param reason why it is worth seeing; empty for somebody's own script
 * @param script the script, ready to be run again
 * @param result timeline, and expectations of the script that were not met
 */
public record RehearsedScenario(
    String name, String reason, String script, Rehearsal.Result result) {}
