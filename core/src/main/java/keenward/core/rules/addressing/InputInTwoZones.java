package keenward.core.rules.addressing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

/** One input of one device stands behind two zones. */
public final class InputInTwoZones implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ADDRESSING, 1, "input-in-two-zones", Severity.ERROR)
          .source(Source.practice())
          .purpose("Looks for an input of a device that more than one zone watches.")
          .consequence(
              "A panel takes an input once: the second zone is refused, or the first one goes dead, and the signals"
                  + " that reach the monitoring centre name the wrong place.")
          .limits(
              "Compares inputs of devices of the plan. Two devices with one serial number are another rule's;"
                  + " plain kinds that stand for a device not placed yet are not compared.")
          .remedy("Give each zone an input of its own.")
          .broken(
              """
              keenward: 1
              site: Example
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "70 1144", inputs: [contact, terminals] }
              zones:
                1: { name: Left window,  response: perimeter, device: Window contact }
                2: { name: Right window, response: perimeter, device: Window contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              devices:
                Left contact:  { kind: contact, wiring: radio, serial: "70 1144", inputs: [contact, terminals] }
                Right contact: { kind: contact, wiring: radio, serial: "70 1145", inputs: [contact, terminals] }
              zones:
                1: { name: Left window,  response: perimeter, device: Left contact }
                2: { name: Right window, response: perimeter, device: Right contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              devices:
                Window contact: { kind: contact, wiring: radio, serial: "70 1144", inputs: [contact, terminals] }
              zones:
                1: { name: Left window,  response: perimeter, device: Window contact }
                2: { name: Right window, response: perimeter, device: { device: Window contact, input: terminals } }
              """)
          .build();

  private record Input(String device, String name) {}

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Map<Input, List<Zone>> users = new LinkedHashMap<>();
    for (Zone zone : input.plan().zones()) {
      for (ZoneDevice device : zone.devices()) {
        if (device instanceof ZoneDevice.Fitted fitted) {
          Input used = new Input(fitted.device().name(), fitted.inputName());
          users.computeIfAbsent(used, ignored -> new ArrayList<>()).add(zone);
        }
      }
    }
    users.forEach((used, zones) -> judge(used, zones, report));
  }

  private static void judge(Input used, List<Zone> zones, Report report) {
    report.judged();
    if (zones.size() < 2) {
      return;
    }
    String what = used.name().isEmpty() ? "The input" : "Input '" + used.name() + "'";
    report.found(
        zones.getLast().path().then("device"),
        what
            + " of device '"
            + used.device()
            + "' stands behind "
            + zones.size()
            + " zones: "
            + Words.zones(zones)
            + ".",
        "Leave it to one of these zones, and give the others an input of their own.",
        Involved.zones(zones.stream().map(Zone::number).toList())
            .and(Involved.devices(List.of(used.device()))));
  }
}
