package keenward.core.building.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;

/** A plan with devices more or fewer. */
final class PlanChange {

  private PlanChange() {}

  /** Without its motion detectors, and the zones that watch nothing else. */
  static SitePlan withoutMotion(SitePlan plan) {
    List<Device> devices =
        plan.devices().stream().filter(device -> !isMotion(device.kind())).toList();
    Set<String> left = devices.stream().map(Device::name).collect(Collectors.toSet());
    List<Zone> zones =
        plan.zones().stream()
            .filter(zone ->
                zone.devices().isEmpty()
                    || zone.devices().stream()
                        .anyMatch(each ->
                            !(each instanceof ZoneDevice.Fitted fitted)
                                || left.contains(fitted.device().name())))
            .toList();
    return of(plan, devices, zones);
  }

  private static boolean isMotion(DeviceKind kind) {
    return kind == DeviceKind.MOTION || kind == DeviceKind.DUAL_MOTION;
  }

  /** With more devices, each on a zone of its own. */
  static SitePlan with(SitePlan plan, List<Device> more, ZoneResponse response) {
    List<Device> devices = new ArrayList<>(plan.devices());
    devices.addAll(more);
    List<Zone> zones = new ArrayList<>(plan.zones());
    int number = zones.stream().mapToInt(Zone::number).max().orElse(0);
    for (Device device : more) {
      number++;
      zones.add(
          new Zone(
              number,
              device.name(),
              response,
              List.of(plan.partitions().getFirst().name()),
              List.of(new ZoneDevice.Fitted(device, Fact.missing())),
              Fact.missing(),
              List.of(),
              Fact.missing(),
              Fact.missing(),
              List.of(),
              Fact.missing(),
              Fact.missing(),
              Fact.missing(),
              Fact.missing(),
              Fact.missing(),
              Fact.missing(),
              List.of(),
              Fact.missing(),
              Fact.missing(),
              Fact.missing(),
              Fact.missing()));
    }
    return of(plan, devices, zones);
  }

  private static SitePlan of(SitePlan plan, List<Device> devices, List<Zone> zones) {
    return new SitePlan(
        plan.site(),
        plan.regimes(),
        plan.monitoring(),
        plan.people(),
        plan.floors(),
        plan.types(),
        devices,
        plan.supplies(),
        plan.junctions(),
        plan.cables(),
        plan.panel(),
        plan.partitions(),
        plan.hasPartitions(),
        zones,
        plan.users(),
        plan.service(),
        plan.unplaced());
  }
}
