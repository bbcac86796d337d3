package keenward.core.building;

import java.util.Optional;
import keenward.core.plan.Device;
import keenward.core.plan.Point;

/**
 * Where a device is.
 *
 * @param device the device
 * @param floor name of its floor
 * @param room name of its room; empty for a device outside
 * @param at its place on the floor: as stated, or the middle of the opening it watches; empty when
 *     only the room is known
 */
public record DevicePlace(Device device, String floor, Optional<String> room, Optional<Point> at) {}
