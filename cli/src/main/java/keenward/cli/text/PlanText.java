package keenward.cli.text;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.usecases.site.SiteFile;

/** The plan as the program understood it. */
public final class PlanText {

  private PlanText() {}

  /**
   * The whole page.
   *
   * @param settings settings in force; shown with their origin when {@code withDefaults}
   */
  public static String of(SiteFile site, Settings settings, boolean withDefaults) {
    SitePlan plan = site.plan();
    Page page = new Page();
    page.heading(plan.site().name())
        .line(
            "regimes    "
                + (plan.regimes().isEmpty()
                    ? "none stated"
                    : String.join(
                        ", ", plan.regimes().stream().map(regime -> regime.words()).toList())))
        .line(
            "partitions "
                + String.join(", ", plan.partitions().stream().map(each -> each.name()).toList()))
        .line("devices    " + plan.devices().size())
        .line("users      " + plan.users().size())
        .line("hash       " + site.sha256());
    page.heading("Zones");
    List<List<String>> zones = new ArrayList<>();
    for (Zone zone : plan.zones()) {
      zones.add(
          List.of(
              Integer.toString(zone.number()),
              zone.name(),
              zone.response().word(),
              String.join(", ", zone.partitions()),
              String.join(", ", zone.devices().stream().map(ZoneDevice::words).toList())));
    }
    page.table(zones);
    page.heading("Settings in force");
    List<List<String>> rows = new ArrayList<>();
    for (Settings.Resolved setting : settings.all()) {
      if (withDefaults || setting.origin() == Settings.Origin.PLAN) {
        rows.add(
            List.of(
                setting.setting().word()
                    + (setting.setting() == Setting.ENTRY_DELAY ? " " + setting.index() : ""),
                setting.words(),
                setting.origin() == Settings.Origin.PLAN
                    ? "stated at " + site.place(setting.path())
                    : "default of " + setting.source()));
      }
    }
    return page.table(rows).toString();
  }
}
