package keenward.core.building.coverage;

import keenward.core.plan.Device;
import keenward.core.plan.Point;

/**
 * The line that a beam watches.
 *
 * @param device the beam
 * @param floor name of its floor
 * @param room name of the room of its first end
 * @param from its first end
 * @param to its other end
 * @param isClear whether nothing drawn stands in it
 */
public record BeamLine(
    Device device, String floor, String room, Point from, Point to, boolean isClear) {}
