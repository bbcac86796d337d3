package keenward.core.rules.power;

import java.util.Optional;
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

/** A battery stands so hot that it lasts half as long. */
public final class BatteryInHeat implements Rule {

  private static final double LIFE_MONTHS = 48;
  private static final double BASE_CELSIUS = 25;
  private static final double HALVING_KELVIN = 10;
  private static final double WARNING_CELSIUS = 35;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 13, "battery-in-heat", Severity.WARNING)
          .source(Source.memory("IEEE 485", "", "base temperature 25 C"))
          .source(Source.practice())
          .purpose(
              "Halves the usual life of a standby battery for each 10 K by which its surroundings are warmer than 25 C over the year.")
          .consequence("It fails years before anybody thinks of replacing it.")
          .limits(
              "Makers state 8 to 10 K for a halving; charging with a voltage that follows the temperature helps. PWR-03 goes by age alone.")
          .parameter("life at 25 C", "4", "y")
          .parameter("halved for each", "10", "K")
          .parameter("warning from", "35", "C")
          .remedy("Move the battery to a cooler place, or replace it as often as the finding says.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { usual temperature: 40 C, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { usual temperature: 20 C, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { usual temperature: 34 C, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
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
      PlanPath place = PlanPath.of("supplies", supply.name(), "usual temperature");
      Optional<Temperature> usual = supply.usualTemperature().find();
      if (usual.isEmpty()) {
        report.notAssessed(
            place,
            "whether the battery of '" + supply.name() + "' ages in the heat",
            "usual temperature: 20 C");
        continue;
      }
      report.judged();
      double celsius = usual.get().celsius();
      if (celsius >= WARNING_CELSIUS) {
        long months =
            Math.round(LIFE_MONTHS / Math.pow(2, (celsius - BASE_CELSIUS) / HALVING_KELVIN));
        report.found(
            place,
            "The battery of '"
                + supply.name()
                + "' stands at "
                + usual.get().written()
                + " over the year: it lasts about "
                + months
                + " months instead of "
                + Math.round(LIFE_MONTHS)
                + ".",
            "Move the battery of '"
                + supply.name()
                + "' to a cooler place, or replace it that often.",
            Involved.NOTHING);
      }
    }
  }
}
