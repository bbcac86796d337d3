package keenward.core.plan;

/**
 * A stair between two floors.
 *
 * @param name name, unique in the plan
 * @param room where it starts, on the floor that states it
 * @param to room of another floor where it ends
 */
public record Stair(String name, String room, String to) {}
