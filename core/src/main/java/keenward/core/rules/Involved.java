package keenward.core.rules;

import java.util.List;
import java.util.stream.Stream;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;

/**
 * What of the plan a finding is about, so that a drawing can light it.
 *
 * @param zones zone numbers
 * @param openings names of openings
 * @param devices names of devices
 * @param rooms names of rooms
 */
public record Involved(
    List<Integer> zones, List<String> openings, List<String> devices, List<String> rooms) {

  /** Nothing that a drawing could light. */
  public static final Involved NOTHING = new Involved(List.of(), List.of(), List.of(), List.of());

  public Involved {
    zones = List.copyOf(zones);
    openings = List.copyOf(openings);
    devices = List.copyOf(devices);
    rooms = List.copyOf(rooms);
  }

  /** Zones. */
  public static Involved zones(List<Integer> zones) {
    return new Involved(zones, List.of(), List.of(), List.of());
  }

  /** One zone. */
  public static Involved zone(int zone) {
    return zones(List.of(zone));
  }

  /** Openings. */
  public static Involved openings(List<String> openings) {
    return new Involved(List.of(), openings, List.of(), List.of());
  }

  /** Devices. */
  public static Involved devices(List<String> devices) {
    return new Involved(List.of(), List.of(), devices, List.of());
  }

  /** The zones that watch one of these devices. */
  public static Involved zonesWatching(SitePlan plan, List<String> devices) {
    return zones(
        plan.zones().stream()
            .filter(zone ->
                zone.devices().stream()
                    .anyMatch(each ->
                        each instanceof ZoneDevice.Fitted fitted
                            && devices.contains(fitted.device().name())))
            .map(Zone::number)
            .toList());
  }

  /** Rooms. */
  public static Involved rooms(List<String> rooms) {
    return new Involved(List.of(), List.of(), List.of(), rooms);
  }

  /** This and that together. */
  public Involved and(Involved other) {
    return new Involved(
        joined(zones, other.zones),
        joined(openings, other.openings),
        joined(devices, other.devices),
        joined(rooms, other.rooms));
  }

  private static <T> List<T> joined(List<T> first, List<T> second) {
    return Stream.concat(first.stream(), second.stream()).distinct().toList();
  }
}
