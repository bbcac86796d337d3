package keenward.core.plan;

import keenward.core.quantities.Length;

/**
 * A wall that differs from the floor's usual one.
 *
 * @param place which wall
 * @param material what it is made of
 * @param height its height, when it does not reach the ceiling
 */
public record Wall(EdgeSelector place, Fact<Material> material, Fact<Length> height) {}
