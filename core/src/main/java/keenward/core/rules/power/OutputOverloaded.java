package keenward.core.rules.power;

import java.util.Optional;
import keenward.core.electrical.Certainty;
import keenward.core.electrical.Explained;
import keenward.core.electrical.OutputLoad;
import keenward.core.electrical.PowerBudget;
import keenward.core.plan.PlanPath;
import keenward.core.quantities.Current;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** The devices draw more than a supply may give. */
public final class OutputOverloaded implements Rule {

  private static final double FULL_PERCENT = 100;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 2, "output-overloaded", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Adds the currents of all devices of a supply, at rest and with every one in alarm, and compares them"
                  + " with its continuous rating.")
          .consequence(
              "The output drops or switches off in the very moment of the alarm, and the sounders with it.")
          .limits(
              "Takes every device to be in alarm at once. The board's own current is left out, since the rating is"
                  + " what is left for devices. Where a current is not known the load is at least what is printed.")
          .parameter("share of the rating, error above", "100", "%")
          .parameter("share of the rating, warning above", "80", "%")
          .remedy("Move devices to another supply, or choose a larger one.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { rating: 300 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 320 mA, supply: Main }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { rating: 600 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 320 mA, supply: Main }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { rating: 400 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 320 mA, supply: Main }
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
    for (PowerBudget budget : input.power().supplies()) {
      Optional<OutputLoad> output = budget.output();
      if (output.isEmpty()) {
        report.notAssessed(
            PlanPath.of("supplies", budget.supply().name(), "rating"),
            "the load of '" + budget.supply().name() + "', since the plan does not give its rating",
            "rating: ... mA");
        continue;
      }
      boolean restIsGreater = output.get().atRest().value() > output.get().inAlarm().value();
      Explained share = restIsGreater ? output.get().atRest() : output.get().inAlarm();
      Explained load =
          restIsGreater ? budget.loads().outputAtRest() : budget.loads().outputInAlarm();
      judge(budget, share, load, restIsGreater ? "at rest" : "in alarm", report);
    }
  }

  private static void judge(
      PowerBudget budget, Explained share, Explained load, String when, Report report) {
    String name = budget.supply().name();
    if (share.value() <= OutputLoad.USUAL_LIMIT_PERCENT) {
      if (share.certainty() == Certainty.KNOWN) {
        report.judged();
      } else {
        report.notAssessed(
            PlanPath.of("supplies", name),
            "whether '"
                + name
                + "' is overloaded, since its devices draw "
                + load.result()
                + " and more is not known",
            "alarm current: ... mA");
      }
      return;
    }
    report.judged();
    boolean isOver = share.value() > FULL_PERCENT;
    report.found(
        isOver ? Severity.ERROR : Severity.WARNING,
        PlanPath.of("supplies", name, "rating"),
        "The devices of '"
            + name
            + "' draw "
            + load.result()
            + " "
            + when
            + ", "
            + Words.number(Math.round(share.value() * 10) / 10.0)
            + " % of its rating of "
            + budget.supply().rating().map(Current::written).orElse("")
            + ".",
        "Move devices to another supply, or choose one of a larger rating than '" + name + "'.",
        Involved.devices(
            budget.loads().devices().stream()
                .filter(line -> line.alarmMilliamps() > 0)
                .map(line -> line.name())
                .toList()));
  }
}
