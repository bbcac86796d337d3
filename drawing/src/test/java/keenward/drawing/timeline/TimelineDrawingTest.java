package keenward.drawing.timeline;

import static keenward.drawing.timeline.TimelineRow.mark;
import static keenward.drawing.timeline.TimelineRow.span;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import keenward.drawing.svg.Lettering;
import keenward.drawing.timeline.TimelineLayout.Line;
import keenward.drawing.timeline.TimelineRow.Kind;
import org.junit.jupiter.api.Test;

class TimelineDrawingTest {

  private static final List<TimelineRow> ENTRY =
      List.of(
          mark(0, "people", "Ines opens the yard door", Kind.ACTION),
          span(0, 30, "keypad", "entry delay", Kind.WARNING).because("zone 1 is entry-exit"),
          mark(34.5, "centre", "130 burglary", Kind.SIGNAL),
          mark(12, "people", "Ines disarms", Kind.ACTION));

  @Test
  void rowsStandInOrderOfTimeEachOnALineOfItsOwn() {
    TimelineLayout layout = TimelineLayout.of(ENTRY, TimelineOptions.desk("Entry"));
    assertThat(layout.lines())
        .extracting(line -> line.row().label())
        .containsExactly("Ines opens the yard door", "entry delay", "Ines disarms", "130 burglary");
    assertThat(layout.times())
        .extracting(TimelineLayout.Time::text)
        .containsExactly("0:00", "0:12", "0:34.5");
    assertThat(layout.lanes().keySet()).containsExactly("people", "keypad", "centre");
  }

  @Test
  void aSpanEndsBetweenTheRowsBeforeAndAfterIt() {
    TimelineLayout layout = TimelineLayout.of(ENTRY, TimelineOptions.desk("Entry"));
    Line delay = layout.lines().get(1);
    double at12 = layout.lines().get(2).y();
    double at34 = layout.lines().get(3).y();
    // 30 s is 18 of the 22.5 s between the two rows.
    assertThat(delay.endY()).isEqualTo(at12 + (at34 - at12) * 18 / 22.5);
    TimelineLayout open =
        TimelineLayout.of(
            List.of(span(0, 300, "sounder", "runs", Kind.ALARM)), TimelineOptions.desk("Open"));
    assertThat(open.lines().getFirst().endY()).isGreaterThan(open.lines().getFirst().y());
  }

  @Test
  void randomRowsNeverShareALineAndNeverLeaveThePage() {
    List<Kind> kinds = List.of(Kind.values());
    for (long seed = 1; seed <= 50; seed++) {
      Random random = new Random(seed);
      List<TimelineRow> rows = new ArrayList<>();
      for (int i = random.nextInt(60); i >= 0; i--) {
        double seconds = random.nextInt(600) / 2.0;
        String label = "word ".repeat(1 + random.nextInt(30));
        Kind kind = kinds.get(random.nextInt(kinds.size()));
        rows.add(
            span(
                    seconds,
                    seconds + random.nextInt(3) * 40,
                    "lane " + random.nextInt(5),
                    label,
                    kind)
                .because(random.nextBoolean() ? "" : label));
      }
      for (TimelineOptions options :
          List.of(TimelineOptions.desk("t"), TimelineOptions.phone("t"))) {
        TimelineLayout layout = TimelineLayout.of(rows, options);
        Line previous = layout.lines().getFirst();
        for (Line line : layout.lines().subList(1, layout.lines().size())) {
          assertThat(line.y())
              .as("seed " + seed)
              .isGreaterThanOrEqualTo(previous.y() + previous.height());
          assertThat(line.row().seconds()).isGreaterThanOrEqualTo(previous.row().seconds());
          previous = line;
        }
        for (Line line : layout.lines()) {
          assertThat(line.endY()).as("seed " + seed).isBetween(line.y(), layout.bottom());
          boolean bold = TimelineLayout.isBold(line.row());
          assertThat(line.labels())
              .as("seed " + seed)
              .allSatisfy(text ->
                  assertThat(
                          layout.textLeft()
                              + Lettering.width(text, TimelineLayout.LABEL_SIZE, bold))
                      .isLessThanOrEqualTo(options.widthPixels() - TimelineLayout.MARGIN_PIXELS));
        }
      }
    }
  }

  @Test
  void theDrawingSaysWhatAndWhen() {
    String svg = TimelineDrawing.svg(ENTRY, TimelineOptions.paper("Entry & <exit>"));
    assertThat(svg)
        .contains("<title id=\"title-entry-exit\">Entry &amp; &lt;exit&gt;</title>")
        .contains("Timeline of 4 events in the lanes people, keypad, centre.")
        .contains("<title>0:00 to 0:30 keypad: entry delay</title>")
        .contains(">zone 1 is entry-exit</text>")
        .doesNotContain("var(");
    assertThat(TimelineDrawing.svg(List.of(), TimelineOptions.phone("None"))).contains("0 events");
  }

  @Test
  void timesAreWrittenAsOnAClock() {
    assertThat(TimelineLayout.clock(0)).isEqualTo("0:00");
    assertThat(TimelineLayout.clock(9.96)).isEqualTo("0:10");
    assertThat(TimelineLayout.clock(61.5)).isEqualTo("1:01.5");
    assertThat(TimelineLayout.clock(7325)).isEqualTo("122:05");
  }

  @Test
  void impossibleTimesAreRefused() {
    assertThatThrownBy(() -> mark(-1, "a", "b", Kind.CHANGE)).hasMessageContaining("-1");
    assertThatThrownBy(() -> span(5, 4, "a", "b", Kind.CHANGE)).hasMessageContaining("5.0 to 4.0");
    assertThatThrownBy(() -> mark(Double.NaN, "a", "b", Kind.CHANGE)).hasMessageContaining("NaN");
  }
}
