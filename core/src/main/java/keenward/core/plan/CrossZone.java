package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Span;

/**
 * Zones of which two have to see something within a window before a burglary is reported.
 *
 * @param zones zone numbers
 * @param window the window
 */
public record CrossZone(List<Integer> zones, Fact<Span> window) {

  public CrossZone {
    zones = List.copyOf(zones);
  }
}
