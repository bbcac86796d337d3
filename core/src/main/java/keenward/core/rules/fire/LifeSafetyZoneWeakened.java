package keenward.core.rules.fire;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.Zone;
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

/** A fire or carbon monoxide zone can be left out, is silent, or is not always live. */
public final class LifeSafetyZoneWeakened implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(
              RuleFamily.FIRE_AND_CARBON_MONOXIDE, 1, "life-safety-zone-weakened", Severity.ERROR)
          .source(Source.practice())
          .source(
              Source.memory(
                  "ANSI/SIA CP-01", "", "swinger shutdown: fire zones are never shut down"))
          .purpose(
              "Looks for fire and carbon monoxide zones that a user may bypass, that may be armed over while open,"
                  + " that are silent, live in some modes only, or shut down after a number of alarms.")
          .consequence("People sleep through a fire that the system saw.")
          .limits(
              "Judges what the plan states. Local code and the authority having jurisdiction decide; a licensed"
                  + " fire technician has to confirm.")
          .remedy(
              "Take the option off: a fire or carbon monoxide zone is always live, always heard, never left out.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Landing smoke, response: fire, device: smoke, bypass: yes }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Landing smoke, response: fire, device: smoke, bypass: no }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Landing window, response: perimeter, device: contact, bypass: yes }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Zone zone : input.plan().zones()) {
      if (Kinds.isLifeSafety(zone.response())) {
        report.judged();
        judge(zone, report);
      }
    }
  }

  private static void judge(Zone zone, Report report) {
    if (zone.mayBypass().orElse(false)) {
      found(zone, "bypass", "may be bypassed by a user", report);
    }
    if (zone.mayForceArm().orElse(false)) {
      found(zone, "force arm", "may be armed over while it is open", report);
    }
    if (zone.silent().orElse(false)) {
      found(zone, "silent", "is silent on site", report);
    }
    List<ArmingMode> absent = new ArrayList<>(List.of(ArmingMode.values()));
    absent.removeAll(zone.liveModes());
    if (!absent.isEmpty()) {
      found(zone, "live in", "is not live in " + Words.words(absent), report);
    }
    int limit = zone.swingerLimit().orElse(0);
    if (limit > 0) {
      found(zone, "swinger limit", "is shut down after " + Words.count(limit, "alarm"), report);
    }
  }

  private static void found(Zone zone, String key, String what, Report report) {
    report.found(
        zone.path().then(key),
        Words.atStart(zone) + " has response " + zone.response().word() + " and " + what + ".",
        "Take `" + key + ":` off zone " + zone.number() + ".",
        Involved.zone(zone.number()));
  }
}
