package keenward.core.rules.survey;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Floor;
import keenward.core.plan.Opening;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;
import keenward.core.rules.survey.OpeningGuards.Guard;

/** Somebody can come in by an opening, and nothing watches it. */
public final class OpeningNotWatched implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 1, "opening-not-watched", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for openings to outside that can be reached, are not excluded, and have no burglary detector on"
                  + " them or in their room that sees them.")
          .consequence("A burglar comes in there, and the system learns of it late or never.")
          .limits(
              "An opening of the lowest floor can be reached, one higher up only where the plan says so. A"
                  + " shock detector in the room guards its panes, a glass-break detector those in its range and line of sight, a curtain or beam any opening of the"
                  + " room. A motion detector counts when it sees a place 0.3 m inside the middle of the"
                  + " opening, walls and furniture in the way; of whichever room it is. One of the room of which the plan"
                  + " does not say what it sees is taken to see it.")
          .remedy(
              "Plan a detector there, or sign off the exclusion with `excluded:` and the reason.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door:   { kind: door,   between: [Store, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Store window: { kind: window, between: [Store, outside], edge: 1, at: 3 m, width: 1.2 m }
              devices:
                Door contact: { kind: contact, wiring: wired, room: Store, opening: Store door }
              zones:
                1: { name: Store door, response: perimeter, device: Door contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door:   { kind: door,   between: [Store, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Store window: { kind: window, between: [Store, outside], edge: 1, at: 3 m, width: 1.2 m }
              devices:
                Door contact:   { kind: contact, wiring: wired, room: Store, opening: Store door }
                Window contact: { kind: contact, wiring: wired, room: Store, opening: Store window }
              zones:
                1: { name: Store door,   response: perimeter, device: Door contact }
                2: { name: Store window, response: perimeter, device: Window contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door:   { kind: door,   between: [Store, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Store window: { kind: window, between: [Store, outside], edge: 1, at: 3 m, width: 1.2 m, excluded: barred and signed off by the owner }
              devices:
                Door contact: { kind: contact, wiring: wired, room: Store, opening: Store door }
              zones:
                1: { name: Store door, response: perimeter, device: Door contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    if (plan.openings().findAny().isEmpty()) {
      report.notAssessed(
          PlanPath.of("floors"),
          "whether every opening is watched, since the plan has no openings",
          "openings: { Front door: { kind: door, between: [Hall, outside] } }");
      return;
    }
    OpeningGuards guards = new OpeningGuards(plan, input.building(), input.views());
    List<String> open = new ArrayList<>();
    for (Floor floor : plan.floors()) {
      boolean isLowest = floor.equals(plan.floors().getFirst());
      for (Opening opening : floor.openings()) {
        if (!opening.isReachable(isLowest) || opening.excluded().isGiven()) {
          continue;
        }
        Guard guard = guards.guard(opening);
        if (!(guard instanceof Guard.Watched) && !guards.placeless().isEmpty()) {
          open.add(opening.name());
        } else {
          report.judged();
          judge(floor, opening, guard, report);
        }
      }
    }
    if (!open.isEmpty()) {
      notAssessed(plan, guards.placeless(), open, report);
    }
  }

  private static void judge(Floor floor, Opening opening, Guard guard, Report report) {
    PlanPath place = PlanPath.of("floors", floor.name(), "openings", opening.name());
    Involved involved =
        Involved.openings(List.of(opening.name()))
            .and(Involved.rooms(List.of(opening.place().room())));
    switch (guard) {
      case Guard.Watched ignored -> {}
      case Guard.NotSeen(List<Device> inRoom) ->
          report.found(
              Severity.WARNING,
              place,
              "Nothing is fitted on '"
                  + opening.name()
                  + "', and "
                  + Words.names(inRoom.stream().map(Device::name).toList())
                  + " in '"
                  + opening.place().room()
                  + (inRoom.stream().anyMatch(each -> each.kind() == DeviceKind.GLASS_BREAK)
                      ? "' does not reach it."
                      : "' looks past it."),
              "Plan a detector on '"
                  + opening.name()
                  + "', turn the one in the room, or sign off `excluded:`.",
              involved.and(Involved.devices(inRoom.stream().map(Device::name).toList())));
      case Guard.Nothing ignored ->
          report.found(
              place,
              "Nothing watches '"
                  + opening.name()
                  + "' (a "
                  + opening.kind().word()
                  + " of '"
                  + opening.place().room()
                  + "'), which can be reached from outside.",
              "Plan a detector on '"
                  + opening.name()
                  + "' or in '"
                  + opening.place().room()
                  + "', or sign off `excluded:`.",
              involved);
    }
  }

  private static void notAssessed(
      SitePlan plan, List<Zone> placeless, List<String> open, Report report) {
    String first = open.getFirst();
    PlanPath place =
        plan.floors().stream()
            .filter(floor -> floor.openings().stream().anyMatch(each -> each.name().equals(first)))
            .findFirst()
            .map(floor -> PlanPath.of("floors", floor.name(), "openings", first))
            .orElse(PlanPath.of("floors"));
    report.notAssessed(
        place,
        "whether anything watches "
            + Words.someNames(open)
            + ", since the plan does not say what "
            + (placeless.size() == 1 ? "zone " : "zones ")
            + Words.someZones(placeless)
            + (placeless.size() == 1 ? " guards" : " guard"),
        "devices: { " + first + " contact: { kind: contact, opening: " + first + " } }");
  }
}
