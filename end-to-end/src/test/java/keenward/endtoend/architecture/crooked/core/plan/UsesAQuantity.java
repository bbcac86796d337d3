package keenward.endtoend.architecture.crooked.core.plan;

import keenward.endtoend.architecture.crooked.core.quantities.UsesThePlan;

/** Closes a cycle between two packages. */
public record UsesAQuantity(UsesThePlan quantity) {}
