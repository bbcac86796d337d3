package keenward.core.rules;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.walking.EntryWays;
import keenward.core.building.walking.Sightings;
import keenward.core.building.walking.SiteWalks;
import keenward.core.building.walking.WalkingMap;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.planned.PanelDefaults;
import keenward.core.dialogue.planned.PlannedMemory;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.loop.LoopAssessment;
import keenward.core.electrical.outage.Outages;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.radio.RadioAssessment;
import org.jspecify.annotations.Nullable;

/**
 * What the rules may look at: the plan, what goes with it, and what is computed from both, each
 * computed once and only when a rule asks for it. One input serves one check on one thread.
 */
public final class CheckInput {
  private final SitePlan plan;
  private final @Nullable PanelDescription panel;
  private final Map<Setting, Long> panelDefaults;
  private final @Nullable LocalDate asOf;
  private @Nullable Settings settings;
  private @Nullable PlannedMemory plannedMemory;
  private @Nullable Building building;
  private @Nullable PowerAssessment power;
  private @Nullable LoopAssessment loops;
  private @Nullable RadioAssessment radio;
  private @Nullable Outages outages;
  private @Nullable DetectorViews views;
  private @Nullable WalkingMap walkingMap;
  private @Nullable EntryWays entryWays;
  private @Nullable Sightings sightings;
  private @Nullable SiteWalks walks;

  private CheckInput(
      SitePlan plan,
      @Nullable PanelDescription panel,
      Map<Setting, Long> panelDefaults,
      @Nullable LocalDate asOf) {
    this.plan = plan;
    this.panel = panel;
    this.panelDefaults = Map.copyOf(panelDefaults);
    this.asOf = asOf;
  }

  /** A plan on its own. */
  public static CheckInput of(SitePlan plan) {
    return new CheckInput(plan, null, Map.of(), null);
  }

  /**
   * The same with the description of its panel, whose own defaults hold where nothing else is said.
   */
  public CheckInput withPanel(PanelDescription description) {
    return withPanel(description, PanelDefaults.of(description));
  }

  /**
   * The same with the description of its panel, and defaults of settings that are known already.
   */
  public CheckInput withPanel(PanelDescription description, Map<Setting, Long> defaults) {
    return new CheckInput(plan, description, defaults, asOf);
  }

  /** The same with the day on which ages are judged; without it they are not assessed. */
  public CheckInput asOf(LocalDate day) {
    return new CheckInput(plan, panel, panelDefaults, day);
  }

  /** The plan. */
  public SitePlan plan() {
    return plan;
  }

  /** The description of its panel. */
  public Optional<PanelDescription> panel() {
    return Optional.ofNullable(panel);
  }

  /** The day on which ages are judged. */
  public Optional<LocalDate> asOf() {
    return Optional.ofNullable(asOf);
  }

  /** The settings in force, each with where it came from. */
  public Settings settings() {
    Settings known = settings;
    if (known == null) {
      known = Settings.of(plan, panelDefaults);
      settings = known;
    }
    return known;
  }

  /** What the plan wants the panel to hold; empty without the description of the panel. */
  public Optional<PlannedMemory> plannedMemory() {
    if (plannedMemory == null && panel != null) {
      plannedMemory = PlannedMemory.from(plan, panel);
    }
    return Optional.ofNullable(plannedMemory);
  }

  /** The building that the plan draws. */
  public Building building() {
    Building known = building;
    if (known == null) {
      known = Building.of(plan);
      building = known;
    }
    return known;
  }

  /** The sums of every supply. */
  public PowerAssessment power() {
    PowerAssessment known = power;
    if (known == null) {
      known = PowerAssessment.of(plan);
      power = known;
    }
    return known;
  }

  /** A long mains failure for every supply. */
  public Outages outages() {
    Outages known = outages;
    if (known == null) {
      known = Outages.of(plan, settings(), power());
      outages = known;
    }
    return known;
  }

  /** What the panel reads of every loop. */
  public LoopAssessment loops() {
    LoopAssessment known = loops;
    if (known == null) {
      known = LoopAssessment.of(plan);
      loops = known;
    }
    return known;
  }

  /** How radio devices are heard. */
  public RadioAssessment radio() {
    RadioAssessment known = radio;
    if (known == null) {
      known = RadioAssessment.of(plan, building(), settings());
      radio = known;
    }
    return known;
  }

  /** What each motion detector sees. */
  public DetectorViews views() {
    DetectorViews known = views;
    if (known == null) {
      known = DetectorViews.of(plan, building());
      views = known;
    }
    return known;
  }

  /** Shortest walks. */
  public WalkingMap walkingMap() {
    WalkingMap known = walkingMap;
    if (known == null) {
      known = WalkingMap.of(plan, building());
      walkingMap = known;
    }
    return known;
  }

  /** The ways in. */
  public EntryWays entryWays() {
    EntryWays known = entryWays;
    if (known == null) {
      known = EntryWays.of(plan, walkingMap());
      entryWays = known;
    }
    return known;
  }

  /** Which zones see somebody who walks. */
  public Sightings sightings() {
    Sightings known = sightings;
    if (known == null) {
      known = Sightings.of(plan, building(), views());
      sightings = known;
    }
    return known;
  }

  /** The walks that delays depend on. */
  public SiteWalks walks() {
    SiteWalks known = walks;
    if (known == null) {
      known = SiteWalks.of(plan, settings(), walkingMap(), entryWays(), sightings());
      walks = known;
    }
    return known;
  }
}
