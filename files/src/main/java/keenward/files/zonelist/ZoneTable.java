package keenward.files.zonelist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Wiring;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.quantities.Span;

/** The zones of a plan as a table that {@link ZoneListReader} reads again. */
public final class ZoneTable {

  private static final List<String> HEADS =
      List.of(
          "Zone number",
          "Zone name",
          "Response",
          "Partition",
          "Device",
          "Wiring",
          "Serial number",
          "Entry delay",
          "Event code",
          "Notes");

  private ZoneTable() {}

  /** The heads, then a row for each zone, then those that never fitted, without a number. */
  public static List<List<String>> of(SitePlan plan) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADS);
    for (Zone zone : plan.zones()) {
      rows.add(
          List.of(
              Integer.toString(zone.number()),
              zone.name(),
              zone.response().word() + (zone.silent().orElse(false) ? ", silent" : ""),
              plan.hasPartitions() ? String.join(", ", zone.partitions()) : "",
              String.join(" + ", zone.devices().stream().map(each -> each.kind().word()).toList()),
              wiring(zone),
              serial(zone),
              delay(plan, zone),
              zone.event().map(String::valueOf).orElse(""),
              zone.note().orElse("")));
    }
    plan.unplaced()
        .forEach(row -> {
          List<String> cells = new ArrayList<>(Collections.nCopies(HEADS.size(), ""));
          cells.set(HEADS.size() - 1, row.text());
          rows.add(cells);
        });
    return rows;
  }

  private static String wiring(Zone zone) {
    return isRadio(zone) ? "radio" : zone.wiring().map(each -> each.word()).orElse("");
  }

  private static boolean isRadio(Zone zone) {
    return zone.devices().stream()
        .anyMatch(each ->
            each instanceof ZoneDevice.Fitted fitted
                && fitted.device().traits().wiring().equals(Fact.of(Wiring.RADIO)));
  }

  private static String serial(Zone zone) {
    return zone.devices().stream()
        .filter(ZoneDevice.Fitted.class::isInstance)
        .map(each -> ((ZoneDevice.Fitted) each).device().serial().orElse(""))
        .filter(serial -> !serial.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static String delay(SitePlan plan, Zone zone) {
    if (zone.response() != ZoneResponse.ENTRY_EXIT) {
      return "";
    }
    Span time = plan.panel().entryDelays().get(zone.entryDelay().orElse(1));
    return time == null ? "" : time.written();
  }
}
