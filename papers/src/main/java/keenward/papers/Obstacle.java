package keenward.papers;

/**
 * Why there is no proved work order.
 *
 * @param what what stands in the way
 * @param remedy what to do about it
 */
public record Obstacle(String what, String remedy) {}
