package keenward.core.building.coverage;

import keenward.core.building.plane.SeenArea;
import keenward.core.plan.Device;

/**
 * What one detector sees of its floor.
 *
 * @param device the detector
 * @param floor name of its floor
 * @param room name of its room
 * @param seen the area
 */
public record DetectorView(Device device, String floor, String room, SeenArea seen) {}
