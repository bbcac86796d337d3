package keenward.core.rules.responses;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;
import keenward.core.rules.responses.SuitableResponses.Fit;

/** A zone's response does not suit its device. */
public final class UnsuitableResponse implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.RESPONSES, 1, "unsuitable-response", Severity.ERROR)
          .source(Source.practice())
          .purpose("Compares the response of each zone with the kind of its device.")
          .consequence(
              "A motion detector that is live day and night alarms as soon as somebody walks by; a smoke detector on"
                  + " a burglary zone is silent while the system is disarmed.")
          .limits(
              "Looks at the first input of a device; what is wired to a further input is not known. A reason turns a"
                  + " doubtful choice into a deliberate one, and a wrong one into a warning.")
          .remedy("Choose a usual response, or state the zone's `reason:`.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Changing room, response: 24-hour, device: motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Changing room, response: instant, device: motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Safe, response: 24-hour, device: shock, reason: the safe is never to be moved }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    List<Zone> withoutDevice = new ArrayList<>();
    for (Zone zone : input.plan().zones()) {
      if (zone.devices().isEmpty()) {
        withoutDevice.add(zone);
      }
      zone.devices().stream()
          .filter(UnsuitableResponse::isFirstInput)
          .map(ZoneDevice::kind)
          .distinct()
          .forEach(kind -> judge(zone, kind, report));
    }
    if (!withoutDevice.isEmpty()) {
      report.notAssessed(
          withoutDevice.getFirst().path(),
          "whether the response suits the device, since the plan names no device of zones "
              + Words.someZones(withoutDevice),
          "device: contact");
    }
  }

  private static boolean isFirstInput(ZoneDevice device) {
    return switch (device) {
      case ZoneDevice.Unplaced ignored -> true;
      case ZoneDevice.Fitted fitted -> {
        List<String> inputs = fitted.device().traits().inputs();
        yield inputs.isEmpty() || inputs.getFirst().equals(fitted.inputName());
      }
    };
  }

  private static void judge(Zone zone, DeviceKind kind, Report report) {
    report.judged();
    Fit fit = SuitableResponses.fit(kind, zone.response());
    boolean hasReason = zone.reason().isGiven();
    if (fit == Fit.USUAL || (fit == Fit.WITH_REASON && hasReason)) {
      return;
    }
    boolean isWrong = fit == Fit.WRONG && !hasReason;
    List<ZoneResponse> usual = SuitableResponses.usual(kind);
    report.found(
        isWrong ? Severity.ERROR : Severity.WARNING,
        zone.path().then("response"),
        Words.atStart(zone)
            + " has response "
            + zone.response().word()
            + " on a device of kind "
            + kind.word()
            + ", where "
            + Words.either(usual)
            + " is usual"
            + zone.reason()
                .map(reason -> "; the reason given is '" + reason + "'.")
                .orElse(", and the plan gives no reason."),
        "Give zone "
            + zone.number()
            + " the response "
            + Words.either(usual)
            + (hasReason ? "." : ", or say why with `reason:`."),
        Involved.zone(zone.number()));
  }
}
