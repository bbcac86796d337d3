package keenward.cli.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import keenward.core.building.coverage.BeamLine;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.FloorCoverage;
import keenward.core.building.coverage.Gap;
import keenward.core.building.coverage.RoomCoverage;
import keenward.core.plan.MissingFact;
import keenward.usecases.coverage.SiteCoverage;

/** How much of each room is watched, and where a person can stand unseen. */
public final class CoverageText {

  private CoverageText() {}

  /** The whole page. */
  public static String of(SiteCoverage coverage) {
    Page page = new Page();
    page.heading("Coverage: " + coverage.site().plan().site().name());
    if (coverage.map().floors().isEmpty()) {
      page.line("not assessed: the plan has no drawing")
          .line(
              "add: floors: { Ground: { rooms: { Hall: { outline: [[0, 0], [6, 0], [6, 4], [0, 4]] } } } }");
    }
    for (FloorCoverage floor : coverage.map().floors()) {
      page.heading(
          floor.floor()
              + ": "
              + tenths(floor.seenSquareMetres())
              + " of "
              + tenths(floor.floorSquareMetres())
              + " m2 seen");
      List<List<String>> rows = new ArrayList<>();
      for (RoomCoverage room : floor.rooms()) {
        rows.add(
            List.of(
                room.room(),
                room.isWatched() ? percent(room.share()) + " seen" : "nothing looks here",
                tenths(room.floorSquareMetres()) + " m2",
                String.join(", ", room.detectors())));
      }
      page.table(rows);
      for (RoomCoverage room : floor.rooms()) {
        if (room.isWatched()) {
          room.gaps().forEach(gap -> page.hanging("  ! ", 4, words(room, gap)));
        }
      }
    }
    blind(coverage.map().views(), page);
    beams(coverage.map().detectors().beams(), page);
    if (!coverage.map().notAssessed().isEmpty()) {
      page.heading("Not assessed");
      for (MissingFact open : coverage.map().notAssessed()) {
        page.hanging("  ", 4, coverage.site().place(open.place()) + " " + open.message());
      }
    }
    return page.toString();
  }

  private static void blind(List<DetectorView> views, Page page) {
    Map<String, List<String>> byDistance = new TreeMap<>();
    for (DetectorView view : views) {
      double metres = view.seen().blindMetres();
      if (metres > 0) {
        byDistance
            .computeIfAbsent(
                Double.isInfinite(metres) ? "at all" : "nearer than " + tenths(metres) + " m",
                ignored -> new ArrayList<>())
            .add(view.device().name());
      }
    }
    if (!byDistance.isEmpty()) {
      page.heading("Under the detectors");
      byDistance.forEach((distance, detectors) ->
          page.hanging(
              "  ", 4, "Nobody " + distance + " is seen by " + String.join(", ", detectors) + "."));
    }
  }

  private static void beams(List<BeamLine> beams, Page page) {
    if (!beams.isEmpty()) {
      page.heading("Beams");
      page.table(
          beams.stream()
              .map(beam ->
                  List.of(
                      beam.device().name(),
                      tenths(beam.from().distanceMetres(beam.to())) + " m",
                      beam.isClear() ? "clear" : "something stands in its way"))
              .toList());
    }
  }

  private static String words(RoomCoverage room, Gap gap) {
    String size = room.room() + ": " + tenths(gap.squareMetres()) + " m2 unseen";
    return switch (gap.reaches().size()) {
      case 0 -> size;
      case 1 -> size + ", open to " + gap.reaches().getFirst();
      default -> size + "; a person can pass unseen between " + String.join(", ", gap.reaches());
    };
  }

  private static String tenths(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  /** Rounded down, so that 100 % means all of it. */
  static String percent(double share) {
    return BigDecimal.valueOf(share * 100 + 1e-9).setScale(0, RoundingMode.FLOOR).toPlainString()
        + " %";
  }
}
