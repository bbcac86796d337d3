package keenward.core.rehearsal.planned;

/**
 * A scenario that a plan suggests.
 *
 * @param name name, unique for the plan
 * @param reason why it is worth seeing
 * @param script the scenario as a script, ready to be run, kept or changed
 */
public record StandardScenario(String name, String reason, String script) {}
