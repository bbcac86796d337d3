package keenward.endtoend.architecture.crooked.core.sums;

/** In a package that core does not have. */
public record Sum(int result) {}
