package keenward.core.rehearsal.planned;

import keenward.core.plan.PlanPath;

/**
 * Something that the plan does not say, or says more finely than it is rehearsed, and what is taken
 * instead.
 *
 * @param place where the plan would say it
 * @param text what is taken
 */
public record Assumption(PlanPath place, String text) {}
