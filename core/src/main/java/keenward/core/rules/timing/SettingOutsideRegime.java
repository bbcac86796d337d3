package keenward.core.rules.timing;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Regime;
import keenward.core.plan.RegimeFigure;
import keenward.core.plan.Settings;
import keenward.core.plan.Standard;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A delay, window or limit is not what a regime allows. */
public final class SettingOutsideRegime implements Rule {

  private static final RuleCard CARD = written();

  private static RuleCard written() {
    RuleCard.Builder builder =
        RuleCard.of(RuleFamily.TIMING, 1, "setting-outside-regime", Severity.ERROR)
            .source(
                Source.read(
                    "ANSI/SIA CP-01",
                    "2000 and 2010",
                    "exit time, abort window, swinger shutdown",
                    "trade articles on the two editions"))
            .source(Source.memory("ANSI/SIA CP-01", "", "entry delay, cancel window"))
            .source(Source.memory("EN 50131-1", "2006+A1:2009", "entry time, sounder duration"))
            .source(Source.memory("UL 1023", "", "entry and exit delay, classic listing text"))
            .purpose(
                "Compares every setting in force, stated or by default, with what each regime of the plan allows."
                    + " Of several regimes the strictest figure rules, and the finding says where they disagree.")
            .consequence(
                "Too short, and honest people set off alarms; too long, and a burglar has time. The site does not"
                    + " meet the regime that it claims.")
            .limits(
                "Knows the figures listed below and no others. Where the plan gives no edition and editions differ,"
                    + " a value that some of them allow is a warning. A regime without figures is not assessed.")
            .remedy("Choose a value inside the range, or correct the regime.")
            .broken(
                """
                keenward: 1
                site: Example
                regime: en50131 grade 2
                panel:
                  entry delays: { 1: 75 s }
                zones:
                  1: { name: Front door, response: entry-exit, device: contact }
                """)
            .mended(
                """
                keenward: 1
                site: Example
                regime: en50131 grade 2
                panel:
                  entry delays: { 1: 40 s }
                zones:
                  1: { name: Front door, response: entry-exit, device: contact }
                """)
            .nearMiss(
                """
                keenward: 1
                site: Example
                regime: en50131 grade 2
                panel:
                  entry delays: { 1: 45 s }
                zones:
                  1: { name: Front door, response: entry-exit, device: contact }
                """);
    for (RegimeFigure figure : RegimeFigure.ALL) {
      if (!figure.rangeWords().isEmpty()) {
        builder.parameter(
            figure.standard().word() + " (" + figure.editions() + "): " + figure.setting().word(),
            figure.rangeWords(),
            "");
      }
    }
    return builder.build();
  }

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    List<Regime> regimes = input.plan().regimes();
    if (regimes.isEmpty()) {
      report.notAssessed(
          PlanPath.of("regime"),
          "delays, windows and limits, since the plan names no regime",
          "regime: cp-01 2010");
    }
    for (Regime regime : regimes) {
      if (regime.standard() == Standard.OTHER) {
        report.notAssessed(
            PlanPath.of("regime"),
            "delays, windows and limits by '"
                + regime.words()
                + "', since the program holds no figures of it",
            "regime: cp-01 2010");
      }
    }
    for (Settings.Resolved setting : input.settings().all()) {
      if (!setting.figures().isEmpty()) {
        report.judged();
        if (!setting.broken().isEmpty()) {
          report(setting, report);
        }
      }
    }
  }

  private static void report(Settings.Resolved setting, Report report) {
    List<RegimeFigure> broken = setting.broken();
    List<RegimeFigure> kept = new ArrayList<>(setting.figures());
    kept.removeAll(broken);
    kept.removeIf(figure -> figure.rangeWords().isEmpty());
    boolean editionDecides =
        broken.stream()
            .allMatch(
                figure -> kept.stream().anyMatch(other -> other.standard() == figure.standard()));
    StringBuilder what =
        new StringBuilder(name(setting))
            .append(" is ")
            .append(setting.words())
            .append(
                setting.origin() == Settings.Origin.PLAN ? "" : " by default of " + origin(setting))
            .append("; ")
            .append(Words.list(broken.stream().map(SettingOutsideRegime::demand).toList()));
    if (!kept.isEmpty()) {
      what.append(", though ")
          .append(Words.list(kept.stream().map(SettingOutsideRegime::demand).toList()));
    }
    report.found(
        editionDecides ? Severity.WARNING : Severity.ERROR,
        setting.path(),
        what.append('.').toString(),
        editionDecides
            ? "State the edition in `regime:`, or choose a value that both allow."
            : remedy(setting),
        Involved.NOTHING);
  }

  private static String remedy(Settings.Resolved setting) {
    long least = 0;
    long most = Long.MAX_VALUE;
    for (RegimeFigure figure : setting.figures()) {
      Long low = figure.least();
      Long high = figure.most();
      least = low == null ? least : Math.max(least, low);
      most = high == null ? most : Math.min(most, high);
    }
    if (least > most) {
      return "The regimes leave no common value: settle with the authority which of them rules.";
    }
    String range =
        most == Long.MAX_VALUE
            ? "at least " + setting.setting().words(least)
            : least == 0
                ? "at most " + setting.setting().words(most)
                : setting.setting().words(least) + " to " + setting.setting().words(most);
    return "Set it to " + range + ".";
  }

  private static String name(Settings.Resolved setting) {
    return switch (setting.setting()) {
      case ENTRY_DELAY -> "Entry delay " + setting.index();
      default -> Words.capitalized(setting.setting().word());
    };
  }

  private static String origin(Settings.Resolved setting) {
    return switch (setting.origin()) {
      case REGIME -> "a regime";
      case PANEL -> "the panel";
      case PLAN, PROGRAM -> "this program";
    };
  }

  private static String demand(RegimeFigure figure) {
    return figure.standard().word()
        + (figure.editions().equals("all editions") ? "" : " (" + figure.editions() + ")")
        + " allows "
        + figure.rangeWords();
  }
}
