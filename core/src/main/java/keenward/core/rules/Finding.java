package keenward.core.rules;

import keenward.core.plan.PlanPath;

/**
 * A fault that a rule found.
 *
 * @param code code of the rule
 * @param severity how much it matters here
 * @param place the place in the plan
 * @param what the fault in one sentence, with the numbers that went in
 * @param remedy what puts it right here
 * @param involved what a drawing can light
 */
public record Finding(
    String code,
    Severity severity,
    PlanPath place,
    String what,
    String remedy,
    Involved involved) {}
