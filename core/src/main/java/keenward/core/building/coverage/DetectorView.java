package keenward.core.building.coverage;

import keenward.core.building.plane.SeenArea;
import keenward.core.plan.CoveragePattern;
import keenward.core.plan.Device;

/**
 * What one detector sees of its floor.
 *
 * @param device the detector
 * @param floor name of its floor
 * @param room name of its room
 * @param seen the area
 */
public record DetectorView(Device device, String floor, String room, SeenArea seen) {

  /** Whether it looks one way and to some distance. */
  public boolean isFan() {
    return device
        .traits()
        .coverage()
        .find()
        .filter(coverage -> coverage.shape() == CoveragePattern.FAN)
        .isPresent();
  }
}
