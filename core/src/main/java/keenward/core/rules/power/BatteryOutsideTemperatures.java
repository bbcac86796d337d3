package keenward.core.rules.power;

import java.util.Optional;
import keenward.core.electrical.TemperatureFactor;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Supply;
import keenward.core.quantities.Temperature;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A battery stands where it gets colder, or hotter, than its capacity is known for. */
public final class BatteryOutsideTemperatures implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 12, "battery-outside-temperatures", Severity.WARNING)
          .source(Source.memory("IEEE 485", "", "table 1: -3.9 to 51.7 C"))
          .source(Source.practice())
          .purpose(
              "Compares the lowest and the usual temperature round a battery with the table of IEEE 485.")
          .consequence(
              "Its capacity is not known; an empty battery freezes a few degrees below 0 C and bursts.")
          .limits("A battery made for the cold has its own table.")
          .parameter("coldest", "-3.9", "C")
          .parameter("hottest", "51.7", "C")
          .remedy("Move the supply to a warmer or cooler place.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { lowest temperature: -10 C, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { lowest temperature: 5 C, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { lowest temperature: -3 C, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Supply supply : input.plan().supplies()) {
      judge(supply, supply.lowestTemperature(), "lowest temperature", report);
      judge(supply, supply.usualTemperature(), "usual temperature", report);
    }
  }

  private static void judge(
      Supply supply, Fact<Temperature> temperature, String key, Report report) {
    Optional<Temperature> found = temperature.find();
    if (found.isEmpty()) {
      // The sums of the battery ask for the lowest, BatteryInHeat for the usual one.
      return;
    }
    report.judged();
    if (TemperatureFactor.at(found.get().celsius()).isEmpty()) {
      report.found(
          PlanPath.of("supplies", supply.name(), key),
          "The "
              + key
              + " round the battery of '"
              + supply.name()
              + "' is "
              + found.get().written()
              + "; what a battery gives is known from -3.9 C to 51.7 C.",
          "Move '" + supply.name() + "' to a place where it is neither so cold nor so hot.",
          Involved.NOTHING);
    }
  }
}
