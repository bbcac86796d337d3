package keenward.core.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Regime;
import keenward.core.plan.Standard;
import keenward.core.plan.Supply;

/** The battery duty that each regime of a plan sets, one row a standard and grade. */
public final class BatteryDuties {
  /** Alarm minutes where EN 50131 is applied: its longest sounder time. */
  private static final double EN_ALARM_MINUTES = 15;

  private BatteryDuties() {}

  /**
   * Duties and what could not be told.
   *
   * @param duties one for each regime whose figures are held
   * @param notAssessed regimes that say something about batteries which is not held, or that lack
   *     their grade
   */
  public record Found(List<BatteryDuty> duties, List<MissingFact> notAssessed) {
    /** Copies the lists. */
    public Found {
      duties = List.copyOf(duties);
      notAssessed = List.copyOf(notAssessed);
    }
  }

  /** The duties for one supply, which is taken to charge its battery from the mains. */
  public static Found of(List<Regime> regimes, Supply supply) {
    List<BatteryDuty> duties = new ArrayList<>();
    List<MissingFact> open = new ArrayList<>();
    for (Regime regime : regimes) {
      switch (regime.standard()) {
        case EN50131 ->
            regime
                .grade()
                .find()
                .ifPresentOrElse(
                    grade -> duties.add(en50131(regime, grade, supply)),
                    () ->
                        open.add(
                            new MissingFact(
                                PlanPath.of("regime"),
                                "battery hours of "
                                    + regime.words()
                                    + ", which depend on the grade",
                                "regime: " + regime.name() + " grade 2")));
        case UL1023 ->
            duties.add(
                new BatteryDuty(
                    regime.words(),
                    4,
                    4,
                    1,
                    Optional.empty(),
                    "UL 1023: 4 h, then 4 min (from memory, medium confidence)"));
        case NFPA72_HOUSEHOLD ->
            duties.add(
                new BatteryDuty(
                    regime.words(),
                    24,
                    4,
                    1.2,
                    Optional.empty(),
                    "NFPA 72-2007 11.6.2(2): 24 h, then 4 min; NFPA 72 10.6.7.2.1: 20 % on top"));
        case OTHER ->
            open.add(
                new MissingFact(
                    PlanPath.of("regime"),
                    "battery hours of " + regime.words() + ", whose figures are not held",
                    "regime: [" + regime.name() + ", " + Standard.UL1023.word() + "]"));
        case CP_01 -> {
          // Features of the control panel against false alarms; nothing about batteries.
        }
      }
    }
    if (duties.isEmpty() && open.isEmpty()) {
      open.add(
          new MissingFact(
              PlanPath.of("regime"),
              "battery hours of supply " + supply.name() + ", since no regime of the plan sets any",
              "regime: " + Standard.UL1023.word()));
    }
    return new Found(duties, open);
  }

  private static BatteryDuty en50131(Regime regime, int grade, Supply supply) {
    boolean high = grade >= 3;
    boolean halved = high && supply.signalsMainsFailure().orElse(false);
    double hours = high ? halved ? 30 : 60 : 12;
    String source =
        "EN 50131-6, supply that charges its battery, grade "
            + grade
            + ": "
            + (high ? "60 h" : "12 h")
            + (halved ? ", halved since a mains failure is signalled" : "")
            + " (from memory); alarm part: longest sounder time of EN 50131-1, common practice";
    return new BatteryDuty(
        regime.words(),
        hours,
        EN_ALARM_MINUTES,
        1,
        Optional.of(
            new RechargeRule(
                0.8, high ? 24 : 72, "EN 50131-6 recharge, grade " + grade + " (from memory)")),
        source);
  }
}
