package keenward.core.rules.survey;

import java.util.List;
import keenward.core.building.coverage.BeamLine;
import keenward.core.plan.PlanPath;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** Something stands between the two ends of a beam. */
public final class BeamBlocked implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 8, "beam-blocked", Severity.WARNING)
          .source(Source.practice())
          .purpose("Looks for walls, leaves and furniture between the two ends of a beam.")
          .consequence("The beam is broken for good: the zone cannot be armed, or is left out.")
          .limits(
              "Furniture counts when it is at least as high as the beam; where that height is not stated, from 1.2 m.")
          .remedy("Move an end of the beam, or what stands between.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  furniture:
                    Shelf: { outline: [[3, 2], [5, 2], [5, 4], [3, 4]], height: 2 m }
              devices:
                Store beam: { kind: beam, wiring: wired, room: Store, at: [0.1, 3], ends at: [7.9, 3], height: 0.6 m }
              zones:
                1: { name: Store, response: instant, device: Store beam }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  furniture:
                    Shelf: { outline: [[3, 2], [5, 2], [5, 4], [3, 4]], height: 2 m }
              devices:
                Store beam: { kind: beam, wiring: wired, room: Store, at: [0.1, 5], ends at: [7.9, 5], height: 0.6 m }
              zones:
                1: { name: Store, response: instant, device: Store beam }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  furniture:
                    Pallet: { outline: [[3, 2], [5, 2], [5, 4], [3, 4]], height: 0.5 m }
              devices:
                Store beam: { kind: beam, wiring: wired, room: Store, at: [0.1, 3], ends at: [7.9, 3], height: 0.6 m }
              zones:
                1: { name: Store, response: instant, device: Store beam }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (BeamLine beam : input.views().beams()) {
      report.judged();
      String name = beam.device().name();
      if (!beam.isClear()) {
        report.found(
            PlanPath.of("devices", name),
            "Something drawn stands between the two ends of '" + name + "'.",
            "Move an end of '" + name + "', or what stands between.",
            Involved.devices(List.of(name)).and(Involved.rooms(List.of(beam.room()))));
      }
    }
  }
}
