package keenward.core.rules.survey;

import java.util.HashSet;
import java.util.Set;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;

/** What the plan gives a reason for. */
final class Explained {

  private Explained() {}

  /** Names of the detectors of zones for which the plan gives a reason. */
  static Set<String> detectors(SitePlan plan) {
    Set<String> explained = new HashSet<>();
    for (Zone zone : plan.zones()) {
      for (ZoneDevice each : zone.devices()) {
        if (zone.reason().isGiven() && each instanceof ZoneDevice.Fitted fitted) {
          explained.add(fitted.device().name());
        }
      }
    }
    return explained;
  }
}
