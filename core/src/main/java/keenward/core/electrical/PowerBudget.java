package keenward.core.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Supply;

/**
 * The sums of one supply, without verdicts.
 *
 * @param supply the supply
 * @param loads what draws from it, line by line
 * @param standby load at rest, in milliamperes
 * @param alarm load in alarm, in milliamperes
 * @param temperature factor for the cold
 * @param needs the battery each regime asks for, in the order of the plan
 * @param strictest the largest of them
 * @param fitted battery fitted or planned, in ampere-hours
 * @param margin fitted less needed, in ampere-hours; negative when it falls short
 * @param choice next usual size above the need and what stands in its way
 * @param leftForBattery current that is left for the battery at rest, in milliamperes; 0 or less
 *     when nothing is left; empty where board, devices and battery share no limit
 * @param recharge recharge time of the fitted battery
 * @param output share of the rating that the devices take
 * @param information rate effect and charging rate, for information
 * @param notAssessed what could not be computed, each with the line to add
 */
public record PowerBudget(
    Supply supply,
    SupplyLoads loads,
    Explained standby,
    Explained alarm,
    Explained temperature,
    List<BatteryNeed> needs,
    Optional<BatteryNeed> strictest,
    Optional<Explained> fitted,
    Optional<Explained> margin,
    Optional<BatteryChoice> choice,
    Optional<Explained> leftForBattery,
    Optional<Recharge> recharge,
    Optional<OutputLoad> output,
    List<Explained> information,
    List<MissingFact> notAssessed) {

  /** Copies the lists. */
  public PowerBudget {
    needs = List.copyOf(needs);
    information = List.copyOf(information);
    notAssessed = List.copyOf(notAssessed);
  }

  /** Every line of the sum in order; those of each need follow the loads. */
  public List<Explained> lines() {
    List<Explained> lines = new ArrayList<>(List.of(standby, alarm));
    needs.forEach(need -> lines.addAll(need.lines()));
    fitted.ifPresent(lines::add);
    margin.ifPresent(lines::add);
    leftForBattery.ifPresent(lines::add);
    recharge.ifPresent(each -> lines.add(each.hours()));
    output.ifPresent(each -> lines.addAll(List.of(each.atRest(), each.inAlarm())));
    lines.addAll(information);
    return List.copyOf(lines);
  }
}
