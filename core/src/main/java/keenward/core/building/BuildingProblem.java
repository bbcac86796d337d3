package keenward.core.building;

import keenward.core.plan.PlanPath;

/**
 * Something in the drawing that does not fit together.
 *
 * @param path its place in the plan
 * @param what what is wrong, with the numbers that show it
 * @param expected what would have been right
 * @param remedy what to change
 */
public record BuildingProblem(PlanPath path, String what, String expected, String remedy) {}
