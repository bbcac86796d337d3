package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import keenward.core.plan.CrossZone;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.quantities.Span;
import keenward.core.rehearsal.CrossGroup;
import keenward.core.rehearsal.Option;
import keenward.core.rehearsal.RehearsalOptions;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.TimingSetting;
import keenward.core.rehearsal.Timings;
import keenward.core.rehearsal.ZoneModel;

/** Makes the system to rehearse from a plan. */
public final class SystemModels {

  private static final long TENTH_MILLISECONDS = 100;
  private static final int USUAL_CROSS_WINDOW_TENTHS = 600;

  private final SitePlan plan;
  private final Settings settings;
  private final List<Assumption> assumptions = new ArrayList<>();

  private SystemModels(SitePlan plan, Settings settings) {
    this.plan = plan;
    this.settings = settings;
  }

  /** The system of a plan, with the settings in force where no panel description gives others. */
  public static PlannedSystem from(SitePlan plan) {
    return from(plan, Settings.of(plan, Map.of()));
  }

  /**
   * The system of a plan.
   *
   * @param settings the settings in force
   * @throws IllegalArgumentException when the plan has more areas than the 64 that can be rehearsed
   */
  public static PlannedSystem from(SitePlan plan, Settings settings) {
    return new SystemModels(plan, settings).make();
  }

  private PlannedSystem make() {
    Areas areas = Areas.of(plan);
    ZoneMaker zones = new ZoneMaker(plan, settings, areas, this::tenths, assumptions);
    List<ZoneModel> zoneModels = new ArrayList<>();
    for (Zone zone : plan.zones()) {
      zoneModels.add(zones.make(zone));
    }
    PeopleMaker people = new PeopleMaker(plan, areas, assumptions);
    SystemModel model =
        new SystemModel(
            areas.models(),
            zoneModels,
            people.users(),
            people.keypads(),
            crossGroups(),
            timings(),
            options());
    return new PlannedSystem(model, assumptions);
  }

  private Timings timings() {
    Timings timings = Timings.standard();
    timings = timings.with(TimingSetting.EXIT_TIME, tenths(Setting.EXIT_TIME));
    timings = timings.with(TimingSetting.SOUNDER_TIME, atLeastATenth(Setting.SOUNDER_TIME));
    timings = timings.with(TimingSetting.ABORT_WINDOW, tenths(Setting.ABORT_WINDOW));
    timings = timings.with(TimingSetting.CANCEL_WINDOW, tenths(Setting.CANCEL_WINDOW));
    timings =
        timings.with(TimingSetting.RECENT_CLOSING_WINDOW, tenths(Setting.RECENT_CLOSING_WINDOW));
    timings = timings.with(TimingSetting.MAINS_REPORT_DELAY, tenths(Setting.MAINS_FAILURE_REPORT));
    timings =
        timings.with(TimingSetting.RADIO_SUPERVISION, atLeastATenth(Setting.RADIO_SUPERVISION));
    timings = timings.with(TimingSetting.WRONG_CODE_LIMIT, count(Setting.LOCK_OUT_AFTER));
    return timings.with(TimingSetting.KEYPAD_LOCK_OUT, atLeastATenth(Setting.LOCK_OUT_PERIOD));
  }

  private RehearsalOptions options() {
    return RehearsalOptions.standard()
        .with(Option.EXIT_RESTART, settings.get(Setting.EXIT_RESTART).value() != 0)
        .with(Option.AUTOMATIC_STAY, settings.get(Setting.AUTOMATIC_STAY).value() != 0);
  }

  private int count(Setting setting) {
    return Math.clamp(settings.get(setting).value(), 0, Integer.MAX_VALUE);
  }

  private int tenths(Setting setting) {
    Settings.Resolved resolved = settings.get(setting);
    return tenths(resolved.value(), resolved.path());
  }

  private int atLeastATenth(Setting setting) {
    int tenths = tenths(setting);
    if (tenths > 0) {
      return tenths;
    }
    assumptions.add(
        new Assumption(
            settings.get(setting).path(),
            setting.word() + " of 0 is rehearsed as a tenth of a second"));
    return 1;
  }

  /** A time in tenths of a second; finer ones are rounded up, and said to be. */
  private int tenths(long milliseconds, PlanPath place) {
    long tenths = Math.ceilDiv(milliseconds, TENTH_MILLISECONDS);
    if (milliseconds % TENTH_MILLISECONDS != 0) {
      assumptions.add(
          new Assumption(
              place, milliseconds + " ms is rehearsed as " + tenths + " tenths of a second"));
    }
    // A plan holds no time of more than 366 days, which fits.
    return Math.toIntExact(tenths);
  }

  private List<CrossGroup> crossGroups() {
    Map<Integer, Integer> indexes = new HashMap<>();
    for (int index = 0; index < plan.zones().size(); index++) {
      indexes.put(plan.zones().get(index).number(), index);
    }
    List<CrossGroup> groups = new ArrayList<>();
    List<Integer> grouped = new ArrayList<>();
    for (int index = 0; index < plan.panel().crossZones().size(); index++) {
      CrossZone cross = plan.panel().crossZones().get(index);
      PlanPath place = PlanPath.of("panel", "cross zones", index);
      List<Integer> members = new ArrayList<>();
      for (int number : cross.zones()) {
        Integer member = indexes.get(number);
        if (member == null || grouped.contains(member)) {
          String why = member == null ? "there is no such zone" : "it is in a group already";
          assumptions.add(
              new Assumption(
                  place, "zone " + number + " is left out of the cross-zone group: " + why));
        } else {
          members.add(member);
          grouped.add(member);
        }
      }
      groups.add(new CrossGroup(members, window(cross.window(), place.then("window"))));
    }
    return groups;
  }

  private int window(Fact<Span> stated, PlanPath place) {
    Span window = stated.orNull();
    if (window != null && window.milliseconds() > 0) {
      return tenths(window.milliseconds(), place);
    }
    assumptions.add(new Assumption(place, "the cross-zone window is taken as 60 s"));
    return USUAL_CROSS_WINDOW_TENTHS;
  }
}
