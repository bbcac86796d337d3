package keenward.core.rules.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Capacity;
import keenward.core.dialogue.description.Capacity.NumberRange;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Wiring;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** The plan has a zone number that the panel does not have, or more of something than it holds. */
public final class PlanExceedsPanel implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CAPACITY, 1, "plan-exceeds-panel", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Compares zone numbers, by the way their device is connected, and the numbers of partitions, users and"
                  + " keypads with what the panel description says that the panel holds.")
          .consequence("The job stops at the keypad: the zone cannot be entered, or hangs on an input that is not there.")
          .limits(
              "Judges what the description states; expanders that make a panel larger have to be in it. Without a"
                  + " description nothing is assessed. Its examples name a panel of eight wired zones.")
          .remedy("Renumber, choose a larger panel, or add the expander to the description.")
          .broken(
              """
              keenward: 1
              site: Example
              panel: { description: panel of eight wired zones }
              devices:
                Store motion: { kind: motion, wiring: wired }
              zones:
                9: { name: Store, response: instant, device: Store motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              panel: { description: panel of eight wired zones }
              devices:
                Store motion: { kind: motion, wiring: wired }
              zones:
                8: { name: Store, response: instant, device: Store motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    Optional<PanelDescription> panel = input.panel();
    if (panel.isEmpty()) {
      report.notAssessed(
          PlanPath.of("panel", "description"),
          "whether the panel holds the plan, since "
              + plan.panel()
                  .description()
                  .map(name -> "the description '" + name + "' is not at hand")
                  .orElse("no panel description is named"),
          "panel: { description: ... }");
      return;
    }
    Capacity capacity = panel.get().capacity();
    if (capacity.zones().isEmpty()) {
      report.notAssessed(
          PlanPath.of("panel", "description"),
          "whether '" + panel.get().panel() + "' holds the zones, since its description does not say how many it has",
          "capacity: { zones: { wired: 1..8 } } (in the panel description)");
    } else {
      plan.zones().forEach(zone -> judge(zone, panel.get(), report));
    }
    count("partitions", plan.partitions().size(), PlanPath.of("partitions"), panel.get(), report);
    count("users", plan.users().size(), PlanPath.of("users"), panel.get(), report);
    count(
        "keypads",
        (int) plan.devicesOf(DeviceKind.KEYPAD).count(),
        PlanPath.of("devices"),
        panel.get(),
        report);
  }

  private static void judge(Zone zone, PanelDescription panel, Report report) {
    report.judged();
    Map<String, NumberRange> zones = panel.capacity().zones();
    Optional<String> connection = connection(zone);
    List<String> allowed = new ArrayList<>();
    zones.forEach(
        (kind, range) -> {
          if (connection.isEmpty() || connection.get().equals(kind)) {
            allowed.add(range.first() + " to " + range.last());
          }
        });
    boolean fits =
        zones.entrySet().stream()
            .filter(each -> connection.isEmpty() || connection.get().equals(each.getKey()))
            .anyMatch(each -> each.getValue().contains(zone.number()));
    if (!fits) {
      String kind = connection.map(word -> word + " zones").orElse("zones");
      report.found(
          zone.path(),
          allowed.isEmpty()
              ? Words.atStart(zone) + " is " + connection.orElse("") + ", and '" + panel.panel() + "' has no " + kind + "."
              : Words.atStart(zone) + " is beyond '" + panel.panel() + "', which has " + kind + " " + Words.list(allowed) + ".",
          allowed.isEmpty()
              ? "Connect zone " + zone.number() + " another way, or choose another panel."
              : "Give zone " + zone.number() + " a number that the panel has.",
          Involved.zone(zone.number()));
    }
  }

  /** The description's word for how the zone's devices are connected; empty when the plan does not say, or several ways. */
  private static Optional<String> connection(Zone zone) {
    List<Wiring> ways =
        zone.devices().stream()
            .filter(ZoneDevice.Fitted.class::isInstance)
            .map(ZoneDevice.Fitted.class::cast)
            .map(fitted -> fitted.device().traits().wiring().find())
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    if (ways.size() != 1) {
      return Optional.empty();
    }
    return Optional.of(
        switch (ways.getFirst()) {
          case WIRED -> "wired";
          case RADIO -> "wireless";
          case BUS -> "bus";
        });
  }

  private static void count(
      String what, int planned, PlanPath place, PanelDescription panel, Report report) {
    Integer most = panel.capacity().counts().get(what);
    if (most == null) {
      return;
    }
    report.judged();
    if (planned > most) {
      report.found(
          place,
          "The plan has " + planned + " " + what + ", and '" + panel.panel() + "' holds " + most + ".",
          "Leave some out, or choose a larger panel.",
          Involved.NOTHING);
    }
  }
}
