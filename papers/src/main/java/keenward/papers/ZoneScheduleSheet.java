package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.Partition;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.UnplacedRow;
import keenward.core.plan.Zone;
import keenward.core.reporting.EventCodes;
import keenward.core.reporting.ZoneEvent;
import keenward.core.reporting.ZoneEvents;

/** Every zone with everything that is known of it, partitions and settings. */
final class ZoneScheduleSheet {

  private ZoneScheduleSheet() {}

  static Sheet of(PapersInput input) {
    SitePlan plan = input.plan();
    View view =
        new View()
            .views("zones", plan.zones().stream().map(zone -> zone(plan, zone)).toList())
            .views("partitions", partitions(plan))
            .views("settings", settings(input))
            .views("unplaced", plan.unplaced().stream().map(ZoneScheduleSheet::row).toList())
            .views("missing", missing(plan));
    return Sheet.of("zone-schedule", "Zone schedule", "technician and inspector", view);
  }

  /** A line about zones where there are none. */
  static List<View> missing(SitePlan plan) {
    return plan.zones().isEmpty()
        ? List.of(
            Say.missing(
                "what the system watches, since the plan has no zone",
                "zones: { 1: { name: Front door, response: entry-exit, device: contact } }",
                "zones"))
        : List.of();
  }

  private static View zone(SitePlan plan, Zone zone) {
    ZoneWords words = new ZoneWords(plan, zone);
    ZoneEvent event = ZoneEvents.of(plan, zone);
    return new View()
        .number("number", zone.number())
        .text("name", zone.name())
        .text("partition", Say.list(zone.partitions()))
        .text("room", words.rooms())
        .text("device", words.devices())
        .text("connection", words.connection())
        .text("loop", words.loop())
        .text("contact", words.contact())
        .text("response", zone.response().word())
        .text("live", words.liveIn())
        .text("route", words.route())
        .text("options", words.options())
        .number("event", event.code())
        .text("meaning", EventCodes.meaning(event.code()))
        .text("restore", Say.yesNo(zone.reportsRestore()))
        .text("reason", Say.factOrBlank(zone.reason()))
        .text("note", Say.factOrBlank(zone.note()));
  }

  static List<View> partitions(SitePlan plan) {
    List<View> views = new ArrayList<>();
    for (Partition partition : plan.partitions()) {
      views.add(
          new View()
              .number("number", partition.number())
              .text("name", partition.name())
              .text("keypads", Say.list(partition.keypads()))
              .text("common", Say.list(partition.commonTo()))
              .number("zones", (int) plan.zonesOf(partition).count()));
    }
    return views;
  }

  private static List<View> settings(PapersInput input) {
    List<View> views = new ArrayList<>();
    for (Settings.Resolved each : input.settings().all()) {
      boolean indexed = each.index() > 0;
      views.add(
          new View()
              .text(
                  "what",
                  indexed
                      ? "Entry delay " + each.index()
                      : Say.capital(each.setting().word().replace(" / ", ", ")))
              .text("value", each.words())
              .text(
                  "source",
                  each.origin() == Settings.Origin.PLAN ? "plan" : "default of " + each.source()));
    }
    return views;
  }

  private static View row(UnplacedRow row) {
    return new View().text("text", row.text()).text("why", row.why());
  }
}
