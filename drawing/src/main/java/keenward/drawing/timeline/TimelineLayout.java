package keenward.drawing.timeline;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.drawing.svg.Lettering;

/**
 * Where everything of a timeline goes. Time runs down the page; each row has a line of its own, so
 * that words never meet. The space between two lines grows with the time between them, but less and
 * less, so that a wait of minutes shows without filling pages.
 *
 * @param lanes lanes with the middle of their track
 * @param lines rows in their places
 * @param times times on the left, each once
 * @param textLeft left edge of the words
 * @param tracksTop where the tracks begin
 * @param bottom lower edge of the last line
 */
record TimelineLayout(
    Map<String, Double> lanes,
    List<Line> lines,
    List<Time> times,
    double textLeft,
    double tracksTop,
    double bottom) {

  static final double MARGIN_PIXELS = 16;
  static final double TITLE_PIXELS = 40;
  static final double LANE_NAME_PIXELS = 18;
  static final double TRACK_PIXELS = 22;
  static final double LABEL_SIZE = 12;
  static final double REASON_SIZE = 10.5;
  private static final double LINE_PIXELS = 16;
  private static final double REASON_PIXELS = 14;
  private static final double GAP_PIXELS = 7;
  private static final double MOST_WAIT_PIXELS = 44;
  private static final double TIME_PIXELS = 52;

  /**
   * A row in its place.
   *
   * @param row the row
   * @param y middle of its first line, and of its mark
   * @param endY where its span ends; the same as {@code y} for a mark
   * @param labels its label in lines
   * @param reasons its reason in lines
   */
  record Line(TimelineRow row, double y, double endY, List<String> labels, List<String> reasons) {

    double height() {
      return labels.size() * LINE_PIXELS + reasons.size() * REASON_PIXELS;
    }

    /** Middle of a line of the label or, after those, of the reason. */
    double lineY(int number) {
      double inLabel = Math.min(number, labels.size());
      double inReason = number - inLabel;
      return y
          + inLabel * LINE_PIXELS
          + inReason * REASON_PIXELS
          - (inReason > 0 || number == labels.size() ? (LINE_PIXELS - REASON_PIXELS) / 2 : 0);
    }
  }

  /**
   * A time on the left.
   *
   * @param text the time
   * @param y its middle
   */
  record Time(String text, double y) {}

  static TimelineLayout of(List<TimelineRow> rows, TimelineOptions options) {
    List<TimelineRow> sorted = new ArrayList<>(rows);
    // Rows of the same moment keep the order in which they were given.
    sorted.sort(Comparator.comparingDouble(TimelineRow::seconds));
    Set<String> names = new LinkedHashSet<>();
    rows.forEach(row -> names.add(row.lane()));
    double tracksLeft = MARGIN_PIXELS + TIME_PIXELS;
    Map<String, Double> lanes = new LinkedHashMap<>();
    for (String name : names) {
      lanes.put(name, tracksLeft + TRACK_PIXELS * (lanes.size() + 0.5));
    }
    double textLeft = tracksLeft + TRACK_PIXELS * lanes.size() + 10;
    double room = options.widthPixels() - MARGIN_PIXELS - textLeft;
    double tracksTop = TITLE_PIXELS + LANE_NAME_PIXELS * lanes.size() + 4;

    List<Line> lines = new ArrayList<>();
    List<Time> times = new ArrayList<>();
    Map<Double, Double> places = new LinkedHashMap<>();
    double y = tracksTop + 18;
    double last = 0;
    for (TimelineRow row : sorted) {
      if (!lines.isEmpty()) {
        y += GAP_PIXELS + wait(row.seconds() - last);
      }
      if (places.putIfAbsent(row.seconds(), y) == null) {
        times.add(new Time(clock(row.seconds()), y));
      }
      List<String> labels = Lettering.wrap(row.label(), LABEL_SIZE, isBold(row), room);
      List<String> reasons =
          row.because().isBlank()
              ? List.of()
              : Lettering.wrap(row.because(), REASON_SIZE, false, room);
      Line line = new Line(row, y, y, labels, reasons);
      lines.add(line);
      y += line.height();
      last = row.seconds();
    }
    return new TimelineLayout(
        lanes, withEnds(lines, places, y), times, textLeft, tracksTop, y + GAP_PIXELS);
  }

  /** Whether a row's label is bold. */
  static boolean isBold(TimelineRow row) {
    return row.kind() == TimelineRow.Kind.ALARM;
  }

  /** Ends of spans: between the rows before and after them, in proportion of time. */
  private static List<Line> withEnds(List<Line> lines, Map<Double, Double> places, double bottom) {
    List<Double> seconds = new ArrayList<>(places.keySet());
    return lines.stream()
        .map(line ->
            line.row().isSpan()
                ? new Line(
                    line.row(),
                    line.y(),
                    place(line.row().untilSeconds(), seconds, places, bottom),
                    line.labels(),
                    line.reasons())
                : line)
        .toList();
  }

  private static double place(
      double until, List<Double> seconds, Map<Double, Double> places, double bottom) {
    double before = 0;
    double beforeY = 0;
    for (double each : seconds) {
      double y = places.getOrDefault(each, bottom);
      if (each >= until) {
        return beforeY + (y - beforeY) * (until - before) / (each - before);
      }
      before = each;
      beforeY = y;
    }
    return bottom;
  }

  /**
   * Extra space for time that passes: 3 px after a second, 17 after half a minute, 44 after four
   * minutes and more.
   */
  private static double wait(double seconds) {
    return Math.min(MOST_WAIT_PIXELS, 3 * Math.sqrt(seconds));
  }

  /** A time such as 0:07 or 12:30; with tenths where it has any. */
  static String clock(double seconds) {
    BigDecimal tenths = BigDecimal.valueOf(Math.round(seconds * 10), 1);
    long whole = tenths.longValue();
    BigDecimal rest = tenths.subtract(BigDecimal.valueOf(whole));
    String text = whole / 60 + ":" + (whole % 60 < 10 ? "0" : "") + whole % 60;
    return rest.signum() == 0 ? text : text + rest.toPlainString().substring(1);
  }
}
