package keenward.endtoend.architecture.crooked.core.building;

/** In a package without a package-info. */
public record Unmarked(String name) {}
