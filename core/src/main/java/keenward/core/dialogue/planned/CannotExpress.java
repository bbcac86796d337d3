package keenward.core.dialogue.planned;

import keenward.core.plan.PlanPath;

/**
 * Something that the plan states and the panel cannot hold.
 *
 * @param place where the plan states it
 * @param what what cannot be held
 * @param expected what the panel can hold
 * @param remedy what to do
 */
public record CannotExpress(PlanPath place, String what, String expected, String remedy) {}
