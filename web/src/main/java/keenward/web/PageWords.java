package keenward.web;

import java.util.List;
import java.util.stream.Collectors;
import keenward.core.building.placing.KeypadPlacer;
import keenward.core.building.placing.Suggestion;
import keenward.core.building.walking.SiteWalk;
import keenward.core.electrical.loop.LoopAssessment;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.Fact;
import keenward.core.plan.Settings;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.quantities.Current;
import keenward.core.rules.CheckResult;
import keenward.core.rules.Finding;
import keenward.usecases.order.KeyIn;

/** Words that several pages share. */
public final class PageWords {

  private PageWords() {}

  /** What a zone watches. */
  public static String devices(Zone zone) {
    if (zone.devices().isEmpty()) {
      return "not stated";
    }
    return String.join(", ", zone.devices().stream().map(ZoneDevice::words).toList());
  }

  /** When a zone is live. */
  public static String live(Zone zone) {
    return zone.response().isAlwaysLive()
        ? "always"
        : String.join(", ", zone.liveModes().stream().map(ArmingMode::word).toList());
  }

  /** A current as written. */
  public static String current(Fact<Current> fact) {
    return fact.map(Current::written).orElse("not known");
  }

  /** The findings counted, and what was not assessed. */
  public static String counts(CheckResult result) {
    return result.summary()
        + (result.notAssessed().isEmpty()
            ? ""
            : ", " + result.notAssessed().size() + " not assessed");
  }

  /** Zone numbers of a finding, for lighting them on the drawing. */
  public static String zones(Finding finding) {
    return String.join(" ", finding.involved().zones().stream().map(String::valueOf).toList());
  }

  /** Title of the page that says what to press. */
  public static String keyInTitle(KeyIn keyIn) {
    return switch (keyIn) {
      case KeyIn.Ordered ordered -> "Work order";
      case KeyIn.Refused refused -> "No order";
      case KeyIn.ByHand byHand -> "Entry sheet";
    };
  }

  /** The line under it. */
  public static String keyInLead(KeyIn keyIn) {
    return switch (keyIn) {
      case KeyIn.Ordered ordered ->
          ordered.order().panel()
              + ", "
              + ordered.order().effort().keys()
              + " keys on keypad kind "
              + ordered.keypad()
              + ", from "
              + ordered.found();
      case KeyIn.Refused refused ->
          "No order could be made or proved for " + refused.description().panel() + ".";
      case KeyIn.ByHand byHand -> byHand.why();
    };
  }

  /** The delay that a walk has to keep within; a dash where none runs. */
  public static String delay(SiteWalk walk) {
    return walk.delay().map(Settings.Resolved::words).orElse("–")
        + (walk.isShort() ? ", short" : "");
  }

  /** Which zones see a walker, in order. */
  public static String seenBy(SiteWalk walk) {
    return walk.seenBy().isEmpty()
        ? "none"
        : walk.seenBy().stream()
            .map(each -> each.zone().number() + " " + each.zone().name())
            .collect(Collectors.joining(", "));
  }

  /** How many detectors are proposed. */
  public static String detectors(Suggestion suggestion) {
    int number = suggestion.placements().size();
    String what =
        number == 0
            ? "No motion detector"
            : number == 1 ? "1 motion detector" : number + " motion detectors";
    return suggestion.wish().isAfresh()
        ? what
        : what + " beside the " + suggestion.kept() + " that are planned and count";
  }

  /** A share, rounded down, so that 100 % means all of it. */
  public static String percent(double share) {
    return (int) Math.floor(share * 100 + 1e-9) + " %";
  }

  /** Where a keypad could go and what that takes. */
  public static String keypad(KeypadPlacer.KeypadPlace place) {
    return Math.round(place.at().xMetres() * 10) / 10.0
        + " m to the right and "
        + Math.round(place.at().yMetres() * 10) / 10.0
        + " m up. 95 of 100 slow people need up to "
        + place.seconds().entrySet().stream()
            .map(door -> (int) Math.ceil(door.getValue()) + " s from " + door.getKey())
            .collect(Collectors.joining(", "))
        + place
            .nowSeconds()
            .map(now -> "; to the keypads of the plan up to " + (int) Math.ceil(now) + " s.")
            .orElse(".");
  }

  /** Loops by the numbers and names of their zones. */
  public static String zones(List<LoopAssessment.Assessed> loops) {
    return loops.stream()
        .map(each -> each.loop().zone().number() + " " + each.loop().zone().name())
        .collect(Collectors.joining(", "));
  }
}
