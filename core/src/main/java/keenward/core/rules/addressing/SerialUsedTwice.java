package keenward.core.rules.addressing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import keenward.core.plan.Device;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
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

/** Two devices carry one serial number, and are used by the same input. */
public final class SerialUsedTwice implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ADDRESSING, 2, "serial-used-twice", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for two devices with one serial number whose same input is used: a label copied from the"
                  + " wrong box, or typed twice.")
          .consequence(
              "The panel learns one device twice and the other never: one place reports under the wrong name, and"
                  + " the other is not watched at all.")
          .limits(
              "Compares letters and digits only, so blanks, hyphens and case make no difference. A device whose two"
                  + " inputs are written as two devices of the plan is let pass.")
          .remedy("Read both labels again and correct the one that is wrong.")
          .broken(
              """
              keenward: 1
              site: Example
              devices:
                Store motion:  { kind: motion, wiring: radio, serial: "61 2208 15" }
                Office motion: { kind: motion, wiring: radio, serial: "61-2208-15" }
              zones:
                1: { name: Store,  response: instant, device: Store motion }
                2: { name: Office, response: instant, device: Office motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              devices:
                Store motion:  { kind: motion, wiring: radio, serial: "61 2208 15" }
                Office motion: { kind: motion, wiring: radio, serial: "61 2208 16" }
              zones:
                1: { name: Store,  response: instant, device: Store motion }
                2: { name: Office, response: instant, device: Office motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              devices:
                Door contact: { kind: contact, wiring: radio, serial: "61 2208 15", inputs: [contact, terminals] }
                Door reed:    { kind: contact, wiring: radio, serial: "61 2208 15", inputs: [contact, terminals] }
              zones:
                1: { name: Upper half, response: perimeter, device: Door contact }
                2: { name: Lower half, response: perimeter, device: { device: Door reed, input: terminals } }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Map<String, Set<String>> inputsInUse = inputsInUse(input.plan());
    Map<String, List<Device>> earlier = new LinkedHashMap<>();
    for (Device device : input.plan().devices()) {
      String serial = device.serial().map(SerialUsedTwice::plain).orElse("");
      if (serial.isEmpty()) {
        continue;
      }
      report.judged();
      List<Device> same = earlier.computeIfAbsent(serial, ignored -> new ArrayList<>());
      for (Device other : same) {
        Set<String> shared = new LinkedHashSet<>(inputs(other, inputsInUse));
        shared.retainAll(inputs(device, inputsInUse));
        if (!shared.isEmpty()) {
          report(input.plan(), other, device, shared.iterator().next(), report);
          break;
        }
      }
      same.add(device);
    }
  }

  private static void report(
      SitePlan plan, Device first, Device second, String inputName, Report report) {
    List<String> both = List.of(first.name(), second.name());
    report.found(
        PlanPath.of("devices", second.name(), "serial"),
        "Devices "
            + Words.names(both)
            + " carry the same serial number "
            + second.serial().orElse("")
            + (inputName.isEmpty() ? "" : " and are used by the same input '" + inputName + "'")
            + ".",
        "Read the labels of both and correct the one that is wrong.",
        Involved.devices(both).and(Involved.zonesWatching(plan, both)));
  }

  private static Map<String, Set<String>> inputsInUse(SitePlan plan) {
    Map<String, Set<String>> inputs = new LinkedHashMap<>();
    for (Zone zone : plan.zones()) {
      for (ZoneDevice each : zone.devices()) {
        if (each instanceof ZoneDevice.Fitted fitted) {
          inputs
              .computeIfAbsent(fitted.device().name(), ignored -> new LinkedHashSet<>())
              .add(fitted.inputName());
        }
      }
    }
    return inputs;
  }

  private static Set<String> inputs(Device device, Map<String, Set<String>> inUse) {
    List<String> named = device.traits().inputs();
    Set<String> unused = Set.of(named.isEmpty() ? "" : named.getFirst());
    return inUse.getOrDefault(device.name(), unused);
  }

  private static String plain(String serial) {
    return serial.replaceAll("[^\\p{L}\\p{N}]", "").toUpperCase(Locale.ROOT);
  }
}
