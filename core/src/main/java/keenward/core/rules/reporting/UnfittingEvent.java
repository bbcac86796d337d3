package keenward.core.rules.reporting;

import java.util.Optional;
import java.util.Set;
import keenward.core.plan.SignalFormat;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneResponse;
import keenward.core.reporting.EventCode;
import keenward.core.reporting.EventCodes;
import keenward.core.reporting.Subject;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A zone sends an event that says something else than its response does. */
public final class UnfittingEvent implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.REPORTING, 2, "unfitting-event", Severity.ERROR)
          .source(
              Source.read(
                  "DC-05",
                  "1999.09",
                  "appendix C, event codes",
                  "two public copies of the code table"))
          .source(Source.practice())
          .purpose(
              "Compares the event code that a zone states with the table of codes, and the code's group with the"
                  + " zone's response.")
          .consequence(
              "The centre acts on the code alone: a fire that arrives as a burglary brings the wrong help, a hold-up"
                  + " that arrives as trouble brings none.")
          .limits(
              "Knows the codes of the 1999 edition; the 2016 edition has more, so a code outside the table is a"
                  + " warning. A reason given on the zone lets a code of another group pass.")
          .remedy(
              "Leave `event:` out, so that the response decides, or choose a code of the right group.")
          .broken(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218" }
              zones:
                1: { name: Landing smoke, response: fire, device: smoke, event: 130 }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218" }
              zones:
                1: { name: Landing smoke, response: fire, device: smoke, event: 111 }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218" }
              zones:
                1: { name: Landing smoke, response: fire, device: smoke, event: 110 }
              """)
          .build();

  private static final Set<String> BURGLARY = Set.of("burglary alarm");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    boolean isDc05 =
        input
                .plan()
                .monitoring()
                .find()
                .flatMap(monitoring -> monitoring.format().find())
                .orElse(SignalFormat.DC_05)
            == SignalFormat.DC_05;
    for (Zone zone : input.plan().zones()) {
      Optional<Integer> event = zone.event().find();
      if (isDc05 && event.isPresent()) {
        report.judged();
        judge(zone, event.get(), report);
      }
    }
  }

  private static void judge(Zone zone, int number, Report report) {
    Optional<EventCode> code = EventCodes.find(number);
    if (code.isEmpty()) {
      report.found(
          Severity.WARNING,
          zone.path().then("event"),
          Words.atStart(zone)
              + " sends event "
              + number
              + ", which "
              + EventCodes.SOURCE
              + ", does not list.",
          "Ask the centre whether it knows event " + number + ", or leave `event:` out.",
          Involved.zone(zone.number()));
      return;
    }
    boolean fits =
        groups(zone.response()).contains(code.get().group())
            && code.get().subject() == Subject.ZONE;
    if (!fits && !zone.reason().isGiven()) {
      report.found(
          zone.path().then("event"),
          Words.atStart(zone)
              + " has response "
              + zone.response().word()
              + " and sends event "
              + number
              + ", '"
              + code.get().meaning()
              + "' ("
              + code.get().group()
              + ").",
          "Leave `event:` out of zone "
              + zone.number()
              + ", or choose a code that says what it is.",
          Involved.zone(zone.number()));
    }
  }

  private static Set<String> groups(ZoneResponse response) {
    return switch (response) {
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT -> BURGLARY;
      case TWENTY_FOUR_HOUR -> Set.of("burglary alarm", "24-hour non-burglary", "general alarm");
      case HOLD_UP -> Set.of("panic alarm");
      case FIRE -> Set.of("fire alarm", "fire supervisory");
      case CARBON_MONOXIDE -> Set.of("24-hour non-burglary", "fire alarm");
      case MEDICAL -> Set.of("medical alarm");
      case TAMPER ->
          Set.of(
              "burglary alarm",
              "general alarm",
              "sensor trouble",
              "system trouble",
              "system peripheral trouble");
      case TECHNICAL ->
          Set.of(
              "24-hour non-burglary",
              "fire supervisory",
              "system trouble",
              "sensor trouble",
              "general alarm");
      case KEY_SWITCH -> Set.of("open/close");
    };
  }
}
