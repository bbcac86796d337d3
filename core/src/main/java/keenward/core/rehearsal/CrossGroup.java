package keenward.core.rehearsal;

import java.util.List;

/**
 * Zones of which two must be violated within a window before either counts as an alarm.
 *
 * @param zones indexes of the zones
 * @param windowTenths the window, in tenths of a second
 */
public record CrossGroup(List<Integer> zones, int windowTenths) {

  public CrossGroup {
    zones = List.copyOf(zones);
    if (windowTenths <= 0) {
      throw new IllegalArgumentException("a cross-zone window is longer than nothing");
    }
  }
}
