package keenward.core.rules.fire;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Supply;
import keenward.core.plan.Wiring;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A wired smoke detector latches, and nothing takes its voltage away to reset it. */
public final class LatchingSmokeWithoutReset implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(
              RuleFamily.FIRE_AND_CARBON_MONOXIDE,
              4,
              "latching-smoke-without-reset",
              Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for wired smoke detectors that stay in alarm until their voltage is taken away, on a supply that"
                  + " a reset at the keypad does not switch.")
          .consequence(
              "After the first smoke the zone stays in alarm until somebody pulls a wire; until then a second fire is"
                  + " not told apart.")
          .limits(
              "Radio detectors and those that let go by themselves are let pass. Mains-fed detectors that only close a"
                  + " contact should say `latching: no`. A licensed fire technician has to confirm.")
          .remedy(
              "Feed the detector from an output that a reset switches off, or choose one that does not latch.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, resets smoke detectors: no }
              devices:
                Store smoke: { kind: smoke, wiring: wired, latching: yes, supply: Main }
              zones:
                1: { name: Store smoke, response: fire, device: Store smoke }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, resets smoke detectors: yes }
              devices:
                Store smoke: { kind: smoke, wiring: wired, latching: yes, supply: Main }
              zones:
                1: { name: Store smoke, response: fire, device: Store smoke }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, resets smoke detectors: no }
              devices:
                Store smoke: { kind: smoke, wiring: wired, latching: no, supply: Main }
              zones:
                1: { name: Store smoke, response: fire, device: Store smoke }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    input
        .plan()
        .devicesOf(DeviceKind.SMOKE)
        .filter(device -> device.traits().wiring().orNull() == Wiring.WIRED)
        .forEach(device -> judge(input.plan(), device, report));
  }

  private static void judge(SitePlan plan, Device device, Report report) {
    PlanPath place = PlanPath.of("devices", device.name());
    String whether = "whether '" + device.name() + "' can be reset, since the plan does not say ";
    Optional<Boolean> latching = device.traits().latching().find();
    if (latching.isEmpty()) {
      report.notAssessed(place, whether + "that it latches or does not", "latching: no");
      return;
    }
    if (!latching.get()) {
      report.judged();
      return;
    }
    Optional<Supply> supply = supply(plan, device);
    if (supply.isEmpty()) {
      report.notAssessed(place, whether + "what feeds it", "supply: Main");
      return;
    }
    PlanPath supplyPlace = PlanPath.of("supplies", supply.get().name());
    Optional<Boolean> resets = supply.get().resetsSmokeDetectors().find();
    if (resets.isEmpty()) {
      report.notAssessed(
          supplyPlace,
          whether + "that a reset switches the output of '" + supply.get().name() + "'",
          "resets smoke detectors: yes");
      return;
    }
    report.judged();
    if (!resets.get()) {
      List<String> devices = List.of(device.name());
      report.found(
          place.then("supply"),
          "Smoke detector '"
              + device.name()
              + "' latches, and a reset does not switch the output of '"
              + supply.get().name()
              + "', which feeds it.",
          "Feed '"
              + device.name()
              + "' from an output that a reset switches off, or choose one that does not latch.",
          Involved.devices(devices).and(Involved.zonesWatching(plan, devices)));
    }
  }

  private static Optional<Supply> supply(SitePlan plan, Device device) {
    Optional<String> named = device.supply().find();
    if (named.isEmpty()) {
      return plan.supplies().size() == 1
          ? Optional.of(plan.supplies().getFirst())
          : Optional.empty();
    }
    return plan.supplies().stream().filter(each -> each.name().equals(named.get())).findFirst();
  }
}
