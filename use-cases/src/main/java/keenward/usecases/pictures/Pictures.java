package keenward.usecases.pictures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.placing.Suggestion;
import keenward.core.building.walking.SiteWalk;
import keenward.core.electrical.BatteryNeed;
import keenward.core.electrical.Certainty;
import keenward.core.electrical.Explained;
import keenward.core.electrical.PowerBudget;
import keenward.core.quantities.Current;
import keenward.core.radio.RadioMap;
import keenward.core.rehearsal.scenario.Row;
import keenward.core.rehearsal.scenario.RowKind;
import keenward.core.rehearsal.scenario.Timeline;
import keenward.core.rules.Finding;
import keenward.drawing.discharge.DischargeDrawing;
import keenward.drawing.discharge.DischargeProfile;
import keenward.drawing.floor.FloorDrawing;
import keenward.drawing.floor.FloorMark;
import keenward.drawing.floor.FloorOptions;
import keenward.drawing.load.LoadDrawing;
import keenward.drawing.load.LoadOptions;
import keenward.drawing.load.SupplyLoad;
import keenward.drawing.svg.Palette;
import keenward.drawing.timeline.TimelineDrawing;
import keenward.drawing.timeline.TimelineOptions;
import keenward.drawing.timeline.TimelineRow;
import keenward.drawing.voltage.VoltageDrawing;
import keenward.usecases.job.SiteJob;
import keenward.usecases.rehearse.RehearsedScenario;

/** Draws what a job found. */
public final class Pictures {

  private static final double TENTHS_PER_SECOND = 10;

  private Pictures() {}

  /** One drawing a floor, by the floor's name; empty when the plan has no drawing. */
  public static Map<String, String> floors(SiteJob job, FloorOptions options) {
    return floors(job, options, "");
  }

  private static Map<String, String> floors(SiteJob job, FloorOptions options, String idPrefix) {
    Map<String, String> drawings = new LinkedHashMap<>();
    for (String floor : FloorDrawing.floors(job.building())) {
      FloorDrawing.svg(
              job.site().plan(),
              job.building(),
              floor,
              options.idPrefix(idPrefix + "floor" + drawings.size() + "-"))
          .ifPresent(svg -> drawings.put(floor, svg));
    }
    return drawings;
  }

  /**
   * One picture for wide screens and one for narrow ones; a page shows whichever fits.
   *
   * @param name what it shows
   * @param wide for a desk
   * @param narrow for a phone
   */
  public record Both(String name, String wide, String narrow) {}

  /** The floors for a page. */
  public static List<Both> forPage(SiteJob job) {
    return both(job, List.of());
  }

  /** The same with the findings as numbered flags. */
  public static List<Both> withFlags(SiteJob job) {
    return both(job, flags(job));
  }

  /** The floors that a motion detector sees any of, with what is seen and where nobody looks. */
  public static List<Both> coverage(SiteJob job) {
    CoverageMap map = job.coverage();
    return both(job, FloorOptions.desk().coverage(map), FloorOptions.phone().coverage(map), "seen-")
        .stream()
        .filter(both -> map.views().stream().anyMatch(view -> view.floor().equals(both.name())))
        .toList();
  }

  /** The floors on which somebody walks, with the walks that delays depend on. */
  public static List<Both> walks(SiteJob job) {
    List<SiteWalk> walks = job.walks().walks();
    return both(job, FloorOptions.desk().walks(walks), FloorOptions.phone().walks(walks), "walk-")
        .stream()
        .filter(both -> walks.stream().anyMatch(walk -> walk.time().route().isOn(both.name())))
        .toList();
  }

  /** The floors with the margins of radio over them. */
  public static List<Both> radio(SiteJob job, List<RadioMap> maps) {
    return both(job, FloorOptions.desk().radio(maps), FloorOptions.phone().radio(maps), "radio-")
        .stream()
        .filter(both -> maps.stream().anyMatch(map -> map.floor().name().equals(both.name())))
        .toList();
  }

  /** The floors on which detectors are proposed, with what all would see then. */
  public static List<Both> suggestion(Suggestion suggestion) {
    FloorOptions desk = FloorOptions.desk().coverage(suggestion.coverage());
    FloorOptions phone = FloorOptions.phone().coverage(suggestion.coverage());
    List<Both> floors = new ArrayList<>();
    for (String floor : FloorDrawing.floors(suggestion.building())) {
      boolean isProposed =
          suggestion.placements().stream()
              .anyMatch(placement -> placement.candidate().floor().equals(floor));
      if (isProposed) {
        String id = "suggested-" + floors.size() + "-";
        Optional<String> wide =
            FloorDrawing.svg(
                suggestion.plan(), suggestion.building(), floor, desk.idPrefix(id + "wide-"));
        Optional<String> narrow =
            FloorDrawing.svg(
                suggestion.plan(), suggestion.building(), floor, phone.idPrefix(id + "narrow-"));
        wide.ifPresent(svg -> floors.add(new Both(floor, svg, narrow.orElse(svg))));
      }
    }
    return floors;
  }

  private static List<Both> both(SiteJob job, List<FloorMark> flags) {
    return both(job, FloorOptions.desk().marks(flags), FloorOptions.phone().marks(flags), "");
  }

  private static List<Both> both(
      SiteJob job, FloorOptions desk, FloorOptions phone, String idPrefix) {
    Map<String, String> wide = floors(job, desk, idPrefix + "wide-");
    Map<String, String> narrow = floors(job, phone, idPrefix + "narrow-");
    List<Both> floors = new ArrayList<>();
    wide.forEach((name, svg) -> floors.add(new Both(name, svg, narrow.getOrDefault(name, svg))));
    return floors;
  }

  /**
   * The lowest floor; empty when the plan has no drawing.
   *
   * @param idPrefix what element ids start with, since a page holds several
   */
  public static String thumbnail(SiteJob job, String idPrefix) {
    return FloorDrawing.floors(job.building()).stream()
        .findFirst()
        .flatMap(floor ->
            FloorDrawing.svg(
                job.site().plan(), job.building(), floor, FloorOptions.desk().idPrefix(idPrefix)))
        .orElse("");
  }

  /** A timeline for a page. */
  public static Both timelineForPage(RehearsedScenario scenario) {
    List<TimelineRow> rows = rows(scenario.result().timeline());
    return new Both(
        scenario.name(),
        TimelineDrawing.svg(rows, TimelineOptions.desk(scenario.name())),
        TimelineDrawing.svg(rows, TimelineOptions.phone(scenario.name())));
  }

  /** Loads and batteries for a page on a desk. */
  public static String loadsForPage(SiteJob job) {
    return LoadDrawing.svg(
        job.power().supplies().stream().map(Pictures::load).toList(), LoadOptions.desk());
  }

  /** Voltages along the cables of each supply for a page. */
  public static List<Both> voltagesForPage(SiteJob job) {
    return VoltageProfiles.of(job.site().plan(), job.power()).stream()
        .map(profile -> graph(profile.supply(), options -> VoltageDrawing.svg(profile, options)))
        .toList();
  }

  /** How the battery of each supply is emptied, for a page, by the supply's name. */
  public static Map<String, Both> dischargesForPage(SiteJob job) {
    Map<String, Both> drawings = new LinkedHashMap<>();
    for (DischargeProfile profile : DischargeProfiles.of(job.outages())) {
      drawings.put(
          profile.supply(),
          graph(profile.supply(), options -> DischargeDrawing.svg(profile, options)));
    }
    return drawings;
  }

  /** The same for paper. */
  public static Map<String, String> dischargesForPaper(SiteJob job) {
    Map<String, String> drawings = new LinkedHashMap<>();
    for (DischargeProfile profile : DischargeProfiles.of(job.outages())) {
      drawings.put(profile.supply(), DischargeDrawing.svg(profile, LoadOptions.paper()));
    }
    return drawings;
  }

  private static Both graph(String name, Function<LoadOptions, String> drawn) {
    return new Both(
        name,
        drawn.apply(LoadOptions.wide().idPrefix("desk-")),
        drawn.apply(LoadOptions.phone().idPrefix("phone-")));
  }

  /** The colours of drawings on a page, light and dark, as style rules. */
  public static String styles() {
    return ":root{"
        + Palette.lightDeclarations()
        + "}\n@media (prefers-color-scheme: dark){:root{"
        + Palette.darkDeclarations()
        + "}}\n";
  }

  /** The findings as flags, numbered from 1 in their order. */
  private static List<FloorMark> flags(SiteJob job) {
    List<FloorMark> flags = new ArrayList<>();
    for (Finding finding : job.check().findings()) {
      flags.add(
          new FloorMark(
              Integer.toString(flags.size() + 1), finding.severity(), finding.involved()));
    }
    return flags;
  }

  /** The rows of a timeline for a drawing, in seconds from the first row. */
  public static List<TimelineRow> rows(Timeline timeline) {
    List<TimelineRow> rows = new ArrayList<>();
    if (!timeline.rows().isEmpty()) {
      int start = timeline.rows().getFirst().atTenths();
      for (Row row : timeline.rows()) {
        rows.add(
            TimelineRow.mark(
                    (row.atTenths() - start) / TENTHS_PER_SECOND,
                    lane(row.kind()),
                    row.what(),
                    kind(row.kind()))
                .because(row.reason()));
      }
    }
    return rows;
  }

  private static SupplyLoad load(PowerBudget budget) {
    return new SupplyLoad(
        budget.supply().name(),
        budget.standby().value(),
        budget.alarm().value(),
        budget.supply().rating().find().map(Current::milliamps),
        budget.strictest().map(BatteryNeed::needed).map(Explained::value),
        budget.fitted().map(Explained::value),
        budget.margin().map(margin -> margin.value() >= 0),
        budget.standby().certainty() != Certainty.KNOWN
            || budget.alarm().certainty() != Certainty.KNOWN);
  }

  private static String lane(RowKind kind) {
    return switch (kind) {
      case INPUT -> "people and zones";
      case DISPLAY, KEYPAD_TONE -> "keypads";
      case SOUNDER, STROBE -> "sounders";
      case SIGNAL -> "centre";
      case LOG, NO_EFFECT -> "panel";
    };
  }

  private static TimelineRow.Kind kind(RowKind kind) {
    return switch (kind) {
      case INPUT -> TimelineRow.Kind.ACTION;
      case DISPLAY, LOG, NO_EFFECT -> TimelineRow.Kind.CHANGE;
      case KEYPAD_TONE -> TimelineRow.Kind.WARNING;
      case SOUNDER, STROBE -> TimelineRow.Kind.ALARM;
      case SIGNAL -> TimelineRow.Kind.SIGNAL;
    };
  }
}
