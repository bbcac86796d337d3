package keenward.core.rules.responses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import keenward.core.plan.CrossZone;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A cross-zone group holds a zone that must not wait for another one. */
public final class UnsuitableCrossZone implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.RESPONSES, 2, "unsuitable-cross-zone", Severity.ERROR)
          .source(Source.memory("ANSI/SIA CP-01", "", "cross zoning: never on fire or panic"))
          .source(Source.practice())
          .purpose(
              "Looks for cross-zone groups with a zone that is always live or starts an entry delay, with fewer than"
                  + " two zones, or with zones of partitions that are armed separately.")
          .consequence(
              "A fire or hold-up waits for a second detector and may never be reported; a pair that cannot both be"
                  + " live reports nothing at all.")
          .limits(
              "Does not compare the window with the time a burglar needs from one detector to the other, nor whether"
                  + " their fields overlap.")
          .parameter("zones of a group, least", "2", "")
          .remedy("Keep only zones in the group that are armed together and alarm at once.")
          .broken(
              """
              keenward: 1
              site: Example
              panel:
                cross zones:
                  - { zones: [1, 2], window: 60 s }
              zones:
                1: { name: Store motion, response: instant, device: motion }
                2: { name: Store smoke,  response: fire,    device: smoke }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              panel:
                cross zones:
                  - { zones: [1, 3], window: 60 s }
              zones:
                1: { name: Store motion, response: instant, device: motion }
                2: { name: Store smoke,  response: fire,    device: smoke }
                3: { name: Store beam,   response: instant, device: beam }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              panel:
                cross zones:
                  - { zones: [1, 2], window: 60 s }
              zones:
                1: { name: Store motion, response: instant, device: motion }
                2: { name: Store door, response: perimeter, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    List<CrossZone> groups = plan.panel().crossZones();
    for (int index = 0; index < groups.size(); index++) {
      PlanPath place = PlanPath.of("panel", "cross zones", index, "zones");
      report.judged();
      judge(plan, groups.get(index), place, report);
    }
  }

  private static void judge(SitePlan plan, CrossZone group, PlanPath place, Report report) {
    Involved involved = Involved.zones(List.copyOf(new TreeSet<>(group.zones())));
    List<Zone> zones =
        group.zones().stream().distinct().map(plan::findZone).flatMap(Optional::stream).toList();
    if (zones.size() < 2) {
      report.found(
          place,
          "The cross-zone group of " + Words.zones(zones) + " has fewer than 2 zones.",
          "Name at least 2 zones, or leave the group out.",
          involved);
      return;
    }
    for (Zone zone : zones) {
      if (!Kinds.isArmedBurglary(zone.response()) || zone.response() == ZoneResponse.ENTRY_EXIT) {
        report.found(
            place,
            Words.atStart(zone)
                + " has response "
                + zone.response().word()
                + " and stands in a cross-zone group, where it waits for another zone.",
            "Take zone " + zone.number() + " out of the group.",
            Involved.zone(zone.number()));
      }
    }
    List<String> shared = new ArrayList<>(zones.getFirst().partitions());
    zones.forEach(zone -> shared.retainAll(zone.partitions()));
    if (shared.isEmpty()) {
      report.found(
          place,
          "The cross-zone group of "
              + Words.zones(zones)
              + " has zones of different partitions, which need not be armed together.",
          "Keep the zones of one partition in the group.",
          involved);
    }
  }
}
