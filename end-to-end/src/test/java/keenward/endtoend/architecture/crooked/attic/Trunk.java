package keenward.endtoend.architecture.crooked.attic;

/** In a room that the house does not have. */
public record Trunk(String contents) {}
