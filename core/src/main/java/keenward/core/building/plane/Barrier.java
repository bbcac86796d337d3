package keenward.core.building.plane;

import keenward.core.plan.Point;

/**
 * A straight piece that sight does not pass.
 *
 * @param from one end
 * @param to the other
 */
public record Barrier(Point from, Point to) {}
