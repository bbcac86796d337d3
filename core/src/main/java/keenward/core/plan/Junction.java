package keenward.core.plan;

/**
 * A joint box where cables meet.
 *
 * @param name name, unique in the plan
 * @param room name of the room it is in
 */
public record Junction(String name, Fact<String> room) {}
