package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.electrical.BatteryNeed;
import keenward.core.electrical.CableRun;
import keenward.core.electrical.Explained;
import keenward.core.electrical.Figures;
import keenward.core.electrical.LoadLine;
import keenward.core.electrical.PowerBudget;
import keenward.core.electrical.Recharge;
import keenward.core.electrical.outage.Outage;
import keenward.core.electrical.outage.OwnCells;
import keenward.core.plan.Battery;
import keenward.core.plan.Supply;
import keenward.core.quantities.Quantity;

/** Every line of the sums of batteries and cables. */
final class BatterySheet {

  private BatterySheet() {}

  static Sheet of(PapersInput input) {
    OwnCells cells = OwnCells.of(input.plan());
    View view =
        new View()
            .views("supplies", input.power().supplies().stream().map(BatterySheet::supply).toList())
            .views("cables", input.power().cableRuns().stream().map(BatterySheet::cable).toList())
            .views(
                "outages",
                input.outages().outages().stream().map(each -> outage(each, input)).toList())
            .views("cells", cells.cells().stream().map(BatterySheet::cell).toList())
            .text("next-visit", cells.nextVisit().map(Object::toString).orElse(Say.NOTHING))
            .views("missing", input.power().notAssessed().stream().map(Say::missing).toList());
    return Sheet.of("battery-sheet", "Battery sheet", "technician and inspector", view);
  }

  private static View supply(PowerBudget budget) {
    Supply supply = budget.supply();
    Optional<Battery> battery = supply.battery().find();
    List<View> facts = new ArrayList<>();
    fact(facts, "Room", Say.fact(supply.room()));
    fact(facts, "Output voltage", Say.fact(supply.voltage().map(Quantity::written)));
    fact(facts, "Rating for devices", Say.fact(supply.rating().map(Quantity::written)));
    fact(facts, "Charging current", Say.fact(supply.chargeCurrent().map(Quantity::written)));
    fact(
        facts,
        "Largest battery it holds",
        Say.fact(supply.largestBattery().map(Quantity::written)));
    fact(
        facts,
        "Battery",
        battery.map(each -> Say.fact(each.capacity().map(Quantity::written))).orElse(Say.NOTHING));
    fact(
        facts,
        "Battery fitted on",
        battery.map(each -> Say.fact(each.fitted().map(Object::toString))).orElse(Say.NOTHING));
    fact(facts, "Lowest temperature", Say.fact(supply.lowestTemperature().map(Quantity::written)));
    List<View> after = new ArrayList<>();
    budget.fitted().ifPresent(line -> after.add(line(line)));
    budget
        .recharge()
        .ifPresent(each -> {
          after.add(line(each.hours()));
          after.add(
              new View()
                  .text("name", "Charge comes back")
                  .text("working", "")
                  .text("result", each.curveWords())
                  .text("source", Recharge.CURVE_SOURCE));
        });
    budget
        .output()
        .ifPresent(each -> {
          after.add(line(each.atRest()));
          after.add(line(each.inAlarm()));
        });
    budget.information().forEach(line -> after.add(line(line)));
    return new View()
        .text("name", supply.name())
        .views("facts", facts)
        .views("loads", budget.loads().lines().stream().map(BatterySheet::load).toList())
        .text("standby", budget.standby().result())
        .text("alarm", budget.alarm().result())
        .views("needs", budget.needs().stream().map(BatterySheet::need).toList())
        .flag("has-verdict", budget.strictest().isPresent())
        .text("needed", budget.strictest().map(each -> each.needed().result()).orElse(""))
        .text("by", budget.strictest().map(each -> each.duty().regime()).orElse(""))
        .text("fitted", budget.fitted().map(Explained::result).orElse(Say.UNKNOWN))
        .text("margin", budget.margin().map(BatterySheet::margin).orElse("not assessed"))
        .flag("short", budget.margin().map(each -> each.value() < 0).orElse(false))
        .text("choice", budget.choice().map(each -> each.words()).orElse(Say.NOTHING))
        .views("after", after)
        .views("missing", budget.notAssessed().stream().map(Say::missing).toList());
  }

  private static View outage(Outage outage, PapersInput input) {
    return new View()
        .text("name", outage.supply())
        .text(
            "svg",
            Optional.ofNullable(input.discharges().get(outage.supply()))
                .map(Picture::fitted)
                .orElse(""))
        .text("duty", outage.duty().map(each -> each.regime() + ": " + each.words()).orElse(""))
        .views("lines", List.of(line(outage.available()), line(outage.cutOff())))
        .views(
            "events",
            outage.events().stream()
                .map(event ->
                    new View()
                        .text("when", event.when())
                        .text("what", event.line().name())
                        .text("working", event.line().working()))
                .toList());
  }

  private static View cell(OwnCells.Cell cell) {
    return new View()
        .text("device", cell.device())
        .text("fitted", cell.fitted().toString())
        .text("life", cell.life().written())
        .text("due", cell.due().toString());
  }

  private static String margin(Explained margin) {
    return margin.value() < 0
        ? "short by " + margin.certainty().words() + Figures.text(-margin.value(), "Ah") + " Ah"
        : margin.result() + " to spare";
  }

  private static void fact(List<View> facts, String what, String value) {
    facts.add(new View().text("what", what).text("value", value));
  }

  private static View load(LoadLine line) {
    return new View()
        .text("name", line.name())
        .text(
            "standby",
            Say.fact(line.standby().map(Quantity::written).or(keenward.core.plan.Fact.unknown())))
        .text(
            "alarm",
            Say.fact(line.alarm().map(Quantity::written).or(keenward.core.plan.Fact.unknown())))
        .text(
            "source",
            line.standbySource().equals(line.alarmSource())
                ? line.standbySource()
                : "at rest: " + line.standbySource() + "; in alarm: " + line.alarmSource());
  }

  private static View need(BatteryNeed need) {
    return new View()
        .text("regime", need.duty().regime())
        .text("duty", need.duty().words())
        .views("lines", need.lines().stream().map(BatterySheet::line).toList());
  }

  private static View line(Explained line) {
    return new View()
        .text("name", line.name())
        .text("working", line.working())
        .text("result", line.result())
        .text("source", line.source());
  }

  private static View cable(CableRun run) {
    return new View()
        .text("device", run.device().name())
        .text("supply", run.supply())
        .text("cables", Say.list(run.cables()))
        .text("volts", run.volts().result())
        .text("minimum", Say.fact(run.minimum().map(Quantity::written)))
        .flag("low", run.isTooLow())
        .views("lines", run.lines().stream().map(BatterySheet::line).toList());
  }
}
