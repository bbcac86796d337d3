package keenward.cli.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.SiteWalk;
import keenward.core.plan.Settings;
import keenward.usecases.walks.TimedWalks;

/** How long each walk takes, and who sees the walker. */
public final class WalksText {

  private WalksText() {}

  /** The whole page. */
  public static String of(TimedWalks timed) {
    Page page = new Page();
    page.heading("Walks: " + timed.site().plan().site().name());
    List<SiteWalk> walks = timed.walks().walks();
    if (!walks.isEmpty()) {
      page.line(
          "Seconds that 50, 85 and 95 of 100 people of the pace need at most, with door and keypad:");
      List<List<String>> rows = new ArrayList<>();
      rows.add(List.of("", "walk", "pace", "50", "85", "95", "delay", "from, to"));
      for (int i = 0; i < walks.size(); i++) {
        rows.add(row(i + 1, walks.get(i)));
      }
      page.table(rows);
      page.heading("Who sees the walker, in order");
      for (int i = 0; i < walks.size(); i++) {
        page.hanging("  " + (i + 1) + "  ", 5, seenBy(walks.get(i)));
      }
    }
    if (!timed.walks().blocked().isEmpty()) {
      page.heading("No way");
      timed.walks().blocked().forEach(why -> page.hanging("  ", 4, why));
    }
    if (!timed.walks().notAssessed().isEmpty()) {
      page.heading("Not assessed");
      timed
          .walks()
          .notAssessed()
          .forEach(open ->
              page.hanging("  ", 4, timed.site().place(open.place()) + " " + open.message()));
    }
    return page.toString();
  }

  private static List<String> row(int number, SiteWalk walk) {
    return List.of(
        Integer.toString(number),
        walk.title(),
        walk.time().pace().word(),
        walk.wholeSeconds(Gait.Share.HALF) + " s",
        walk.wholeSeconds(Gait.Share.MOST) + " s",
        walk.wholeSeconds(Gait.Share.NEARLY_ALL) + " s",
        walk.delay().map(Settings.Resolved::words).orElse("-") + (walk.isShort() ? " short" : ""),
        walk.from() + " to " + walk.to() + ", " + walk.time().route().metresInWords());
  }

  private static String seenBy(SiteWalk walk) {
    return walk.seenBy().isEmpty()
        ? "nobody"
        : walk.seenBy().stream()
            .map(each ->
                each.zone().number()
                    + " "
                    + each.zone().name()
                    + each.metres().map(metres -> " after " + metres(metres)).orElse(""))
            .collect(Collectors.joining(", "));
  }

  private static String metres(double metres) {
    return BigDecimal.valueOf(metres).setScale(1, RoundingMode.HALF_UP).toPlainString() + " m";
  }
}
