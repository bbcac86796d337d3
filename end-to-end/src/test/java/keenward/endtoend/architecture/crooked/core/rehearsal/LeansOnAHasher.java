package keenward.endtoend.architecture.crooked.core.rehearsal;

import keenward.endtoend.architecture.crooked.core.plan.Hasher;

/** Uses a class elsewhere in core that the browser could not run. */
public record LeansOnAHasher(Hasher hasher) {}
