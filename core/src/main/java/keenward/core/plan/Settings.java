package keenward.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.quantities.Span;
import org.jspecify.annotations.Nullable;

/**
 * Every system-wide setting in force, each with where its value came from: the plan, else the
 * regime, else the panel description, else the program. Of several regimes the strictest figure
 * rules.
 */
public final class Settings {

  /** Where a value came from. */
  public enum Origin {
    /** The plan states it. */
    PLAN,
    /** Default of a regime. */
    REGIME,
    /** Default of the panel description. */
    PANEL,
    /** Default of this program. */
    PROGRAM
  }

  /**
   * A setting in force.
   *
   * @param setting which
   * @param index for entry delays their number, otherwise 0
   * @param value its value; the unit is by {@link Setting#kind}
   * @param origin where it came from
   * @param source the same in words, with the clause for a regime
   * @param figures what the regimes of the plan say about it
   * @param path where the plan states it, or would
   */
  public record Resolved(
      Setting setting,
      int index,
      long value,
      Origin origin,
      String source,
      List<RegimeFigure> figures,
      PlanPath path) {

    /** The value in words. */
    public String words() {
      return setting.words(value);
    }

    /** The figures that the value breaks. */
    public List<RegimeFigure> broken() {
      return figures.stream().filter(figure -> !figure.allows(value)).toList();
    }
  }

  private final List<Resolved> all;

  private Settings(List<Resolved> all) {
    this.all = List.copyOf(all);
  }

  /**
   * Resolves the settings of a plan.
   *
   * @param panelDefaults defaults of the panel description; empty without one
   */
  public static Settings of(SitePlan plan, Map<Setting, Long> panelDefaults) {
    List<Resolved> all = new ArrayList<>();
    for (Setting setting : Setting.values()) {
      if (setting == Setting.ENTRY_DELAY && !plan.panel().entryDelays().isEmpty()) {
        plan.panel()
            .entryDelays()
            .forEach((index, delay) ->
                all.add(resolve(plan, setting, index, delay.milliseconds(), panelDefaults)));
      } else {
        int index = setting == Setting.ENTRY_DELAY ? 1 : 0;
        all.add(resolve(plan, setting, index, stated(plan.panel(), setting), panelDefaults));
      }
    }
    return new Settings(all);
  }

  /** All settings, in the order of {@link Setting}, entry delays by number. */
  public List<Resolved> all() {
    return all;
  }

  /** A setting that is not an entry delay, or entry delay 1. */
  public Resolved get(Setting setting) {
    return all.stream()
        .filter(each -> each.setting() == setting)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("every setting is resolved"));
  }

  /** An entry delay by number. */
  public Optional<Resolved> findEntryDelay(int number) {
    return all.stream()
        .filter(each -> each.setting() == Setting.ENTRY_DELAY && each.index() == number)
        .findFirst();
  }

  private static Resolved resolve(
      SitePlan plan,
      Setting setting,
      int index,
      @Nullable Long stated,
      Map<Setting, Long> panelDefaults) {
    List<RegimeFigure> figures =
        RegimeFigure.ALL.stream()
            .filter(figure -> figure.setting() == setting)
            .filter(figure -> plan.regimes().stream().anyMatch(figure::appliesTo))
            .toList();
    PlanPath path = path(setting, index);
    if (stated != null) {
      return new Resolved(setting, index, stated, Origin.PLAN, "the plan", figures, path);
    }
    Long panelDefault = panelDefaults.get(setting);
    for (RegimeFigure figure : figures) {
      if (figure.usual() != null) {
        long strictest = clamp(figure.usual(), figures);
        return new Resolved(
            setting, index, strictest, Origin.REGIME, figure.source(), figures, path);
      }
    }
    if (panelDefault != null) {
      return new Resolved(
          setting, index, panelDefault, Origin.PANEL, "the panel description", figures, path);
    }
    return new Resolved(
        setting, index, setting.programDefault(), Origin.PROGRAM, "this program", figures, path);
  }

  /**
   * The usual value, moved into the range that every figure allows; the order of the figures
   * decides ties.
   */
  private static long clamp(long usual, List<RegimeFigure> figures) {
    long value = usual;
    for (RegimeFigure figure : figures) {
      if (!figure.allows(value)) {
        Long least = figure.least();
        Long most = figure.most();
        value =
            least != null && value < least ? least : most != null ? Math.min(value, most) : value;
      }
    }
    return value;
  }

  private static PlanPath path(Setting setting, int index) {
    PlanPath path = PlanPath.of("panel");
    for (String key : setting.word().split(" / ", -1)) {
      path = path.then(key);
    }
    return setting == Setting.ENTRY_DELAY ? path.then(index) : path;
  }

  private static @Nullable Long stated(PanelSettings panel, Setting setting) {
    return switch (setting) {
      case ENTRY_DELAY -> null;
      case EXIT_TIME -> milliseconds(panel.exitTime());
      case SOUNDER_TIME -> milliseconds(panel.sounderTime());
      case ABORT_WINDOW -> milliseconds(panel.abortWindow());
      case CANCEL_WINDOW -> milliseconds(panel.cancelWindow());
      case RECENT_CLOSING_WINDOW -> milliseconds(panel.recentClosingWindow());
      case SWINGER_LIMIT -> panel.swingerLimit().map(Integer::longValue).orNull();
      case EXIT_RESTART -> flag(panel.exitRestart());
      case AUTOMATIC_STAY -> flag(panel.automaticStay());
      case MAINS_FAILURE_REPORT -> milliseconds(panel.mainsFailureReport());
      case RADIO_SUPERVISION -> milliseconds(panel.radioSupervision());
      case LOCK_OUT_AFTER -> panel.keypadLockOut().map(lock -> (long) lock.after()).orNull();
      case LOCK_OUT_PERIOD ->
          panel.keypadLockOut().find().map(lock -> milliseconds(lock.period())).orElse(null);
    };
  }

  private static @Nullable Long milliseconds(Fact<Span> span) {
    return span.map(Span::milliseconds).orNull();
  }

  private static @Nullable Long flag(Fact<Boolean> fact) {
    return fact.map(yes -> yes ? 1L : 0L).orNull();
  }
}
