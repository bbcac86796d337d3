package keenward.files.zonelist;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.ZoneResponse;

/**
 * A zone as a list states it.
 *
 * @param row number of its row
 * @param number its number
 * @param name its name
 * @param response what it does
 * @param partitions names of its partitions; empty for the only one
 * @param devices what it watches
 * @param wiring how its loop is wired
 * @param delay its own entry delay
 * @param event its DC-05 event code
 * @param silent whether the list calls it silent
 * @param note everything that has no place of its own
 */
record ListedZone(
    int row,
    int number,
    String name,
    ZoneResponse response,
    List<String> partitions,
    List<Sensor> devices,
    Optional<LoopWiring> wiring,
    Optional<DelaySeconds> delay,
    Optional<Integer> event,
    boolean silent,
    String note) {

  ListedZone {
    partitions = List.copyOf(partitions);
    devices = List.copyOf(devices);
  }

  /** A time in seconds. */
  record DelaySeconds(int seconds) {}

  /**
   * A sensor.
   *
   * @param kind what it is
   * @param radio whether it is wireless
   * @param serial its serial number; empty when none is stated
   */
  record Sensor(DeviceKind kind, boolean radio, String serial) {}
}
