package keenward.core.proof;

/**
 * Where a step is done.
 *
 * @param floor name of the floor; empty when not known
 * @param room name of the room
 */
public record Place(String floor, String room) {}
