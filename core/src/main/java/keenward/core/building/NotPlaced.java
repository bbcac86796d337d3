package keenward.core.building;

import keenward.core.plan.PlanPath;

/**
 * Something that can't be placed in the drawing because the plan does not say enough; no fault.
 *
 * @param path its place in the plan
 * @param what what has no place
 * @param lineToAdd the line that would place it
 */
public record NotPlaced(PlanPath path, String what, String lineToAdd) {}
