package keenward.core.rules.fire;

import java.util.List;
import java.util.Optional;
import keenward.core.building.RoomGeometry;
import keenward.core.building.sound.Audibility;
import keenward.core.building.sound.Heard;
import keenward.core.plan.Floor;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** The alarm does not wake who sleeps behind a shut door. */
public final class AlarmTooQuietAtBed implements Rule {

  private static final double LEAST_DECIBELS = 75;

  private static final RuleCard CARD =
      RuleCard.of(
              RuleFamily.FIRE_AND_CARBON_MONOXIDE, 6, "alarm-too-quiet-at-bed", Severity.WARNING)
          .source(
              Source.read(
                  "NFPA 72",
                  "2007",
                  "household, sound in bedrooms",
                  "trade article on residential fire alarm systems"))
          .source(Source.memory("usual sound losses of walls and doors", "", "single figures"))
          .purpose(
              "Under `nfpa72-household`, reckons how loud the sounders are in each bedroom with its doors shut, and looks"
                  + " for less than 75 dBA at the pillow.")
          .consequence("Who sleeps there does not wake.")
          .limits(
              "Reckoned by the inverse square of the way and usual losses of walls and doors (docs/methods/sound.md); what"
                  + " the room throws back is left out. Half a metre out of the quietest corner stands for the pillow. A"
                  + " sound louder by the background noise is not looked at. Measure on site; local code and the authority"
                  + " having jurisdiction decide.")
          .parameter("at the pillow", "75", "dBA")
          .parameter("shut door", "20", "dB")
          .remedy("Plan a sounder in the bedroom, or smoke detectors that sound together.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  wall material: brick
                  rooms:
                    Landing: { use: landing, outline: [[0, 0], [6, 0], [6, 2], [0, 2]] }
                    Bedroom: { use: bedroom, outline: [[0, 2], [4, 2], [4, 6], [0, 6]] }
                  openings:
                    Bedroom door: { kind: door, between: [Landing, Bedroom], at: 2 m, width: 0.8 m }
              devices:
                Bedroom smoke:   { kind: smoke, wiring: wired, latching: no, room: Bedroom, at: [2, 4] }
                Landing smoke:   { kind: smoke, wiring: wired, latching: no, room: Landing, at: [3, 1] }
                Landing sounder: { kind: sounder, wiring: wired, room: Landing, at: [5.9, 1], sound: { level: 90 dB, at: 3 m } }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
                2: { name: Landing smoke, response: fire, device: Landing smoke }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  wall material: brick
                  rooms:
                    Landing: { use: landing, outline: [[0, 0], [6, 0], [6, 2], [0, 2]] }
                    Bedroom: { use: bedroom, outline: [[0, 2], [4, 2], [4, 6], [0, 6]] }
                  openings:
                    Bedroom door: { kind: door, between: [Landing, Bedroom], at: 2 m, width: 0.8 m }
              devices:
                Bedroom smoke:   { kind: smoke, wiring: wired, latching: no, room: Bedroom, at: [2, 4] }
                Landing smoke:   { kind: smoke, wiring: wired, latching: no, room: Landing, at: [3, 1] }
                Landing sounder: { kind: sounder, wiring: wired, room: Bedroom, at: [0.1, 4], sound: { level: 90 dB, at: 3 m } }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
                2: { name: Landing smoke, response: fire, device: Landing smoke }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  wall material: brick
                  rooms:
                    Landing: { use: landing, outline: [[0, 0], [6, 0], [6, 2], [0, 2]] }
                    Bedroom: { use: bedroom, outline: [[0, 2], [4, 2], [4, 6], [0, 6]] }
                  openings:
                    Bedroom door: { kind: door, between: [Landing, Bedroom], at: 2 m, width: 0.8 m }
              devices:
                Bedroom smoke:   { kind: smoke, wiring: wired, latching: no, room: Bedroom, at: [2, 4] }
                Landing smoke:   { kind: smoke, wiring: wired, latching: no, room: Landing, at: [3, 1] }
                Landing sounder: { kind: sounder, wiring: wired, room: Landing, at: [5.9, 1], sound: { level: 105 dB, at: 3 m } }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
                2: { name: Landing smoke, response: fire, device: Landing smoke }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    if (!SleepingRooms.isJudged(plan) || !SleepingRooms.hasAny(plan)) {
      return;
    }
    Audibility audibility = Audibility.of(plan, input.walkingMap());
    for (Floor floor : plan.floors()) {
      for (Room bedroom : SleepingRooms.bedrooms(floor)) {
        judge(input, audibility, floor, bedroom, report);
      }
    }
  }

  private static void judge(
      CheckInput input, Audibility audibility, Floor floor, Room bedroom, Report report) {
    PlanPath place = PlanPath.of("floors", floor.name(), "rooms", bedroom.name());
    String question = "how loud the alarm is in '" + bedroom.name() + "'";
    Optional<RoomGeometry> drawn = input.building().findRoom(bedroom.name());
    if (drawn.isEmpty()) {
      report.notAssessed(
          place, question + ", since it is not drawn", "outline: [[0, 0], [4, 0], [4, 3], [0, 3]]");
      return;
    }
    Optional<Heard> heard = audibility.atQuietest(drawn.get());
    boolean isEnough = heard.filter(each -> each.decibels() >= LEAST_DECIBELS).isPresent();
    if (!isEnough && !audibility.notKnown().isEmpty()) {
      MissingFact missing = audibility.notKnown().getFirst();
      report.notAssessed(
          missing.place(), question + ", since " + missing.why(), missing.lineToAdd());
      return;
    }
    if (heard.isEmpty()) {
      report.notAssessed(
          place,
          question + ", since no sounder of which the plan says how loud it is can be heard there",
          "sound: { level: 95 dB, at: 3 m }");
      return;
    }
    report.judged();
    if (!isEnough) {
      report(place, bedroom, heard.get(), report);
    }
  }

  private static void report(PlanPath place, Room bedroom, Heard heard, Report report) {
    report.found(
        place,
        "In the quietest corner of '"
            + bedroom.name()
            + "' the loudest sounder, '"
            + heard.sounder().name()
            + "', comes to about "
            + Math.round(heard.decibels())
            + " dB after "
            + Words.number(Math.round(heard.metres() * 10) / 10.0)
            + " m"
            + (heard.through().isEmpty() ? "" : " and through " + Words.list(heard.through()))
            + "; 75 dB at the pillow is asked for.",
        "Plan a sounder in '" + bedroom.name() + "', or smoke detectors that sound together.",
        Involved.rooms(List.of(bedroom.name()))
            .and(Involved.devices(List.of(heard.sounder().name()))));
  }
}
