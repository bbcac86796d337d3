package keenward.endtoend.architecture.crooked.core.quantities;

import keenward.endtoend.architecture.crooked.core.plan.Tidy;

/** A lower package that leans on a higher one. */
public record UsesThePlan(Tidy plan) {}
