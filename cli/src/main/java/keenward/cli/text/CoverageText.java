package keenward.cli.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
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
              + squareMetres(floor.seenSquareMetres())
              + " of "
              + squareMetres(floor.floorSquareMetres())
              + " m2 seen");
      List<List<String>> rows = new ArrayList<>();
      for (RoomCoverage room : floor.rooms()) {
        rows.add(
            List.of(
                room.room(),
                room.isWatched() ? percent(room.share()) + " seen" : "nothing looks here",
                squareMetres(room.floorSquareMetres()) + " m2",
                String.join(", ", room.detectors())));
      }
      page.table(rows);
      for (RoomCoverage room : floor.rooms()) {
        if (room.isWatched()) {
          room.gaps().forEach(gap -> page.hanging("  ! ", 4, words(room, gap)));
        }
      }
    }
    if (!coverage.map().notAssessed().isEmpty()) {
      page.heading("Not assessed");
      for (MissingFact open : coverage.map().notAssessed()) {
        page.hanging("  ", 4, coverage.site().place(open.place()) + " " + open.message());
      }
    }
    return page.toString();
  }

  private static String words(RoomCoverage room, Gap gap) {
    String size = room.room() + ": " + squareMetres(gap.squareMetres()) + " m2 unseen";
    return switch (gap.reaches().size()) {
      case 0 -> size;
      case 1 -> size + ", open to " + gap.reaches().getFirst();
      default -> size + "; a person can pass unseen between " + String.join(", ", gap.reaches());
    };
  }

  private static String squareMetres(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  /** Rounded down, so that 100 % means all of it. */
  static String percent(double share) {
    return BigDecimal.valueOf(share * 100 + 1e-9).setScale(0, RoundingMode.FLOOR).toPlainString()
        + " %";
  }
}
