package keenward.papers;

import java.util.List;
import keenward.drawing.timeline.TimelineRow;

/**
 * A rehearsed scenario.
 *
 * @param name its name
 * @param reason why it is worth seeing; empty for none
 * @param rows its timeline
 * @param unmet expectations that were not met, a sentence each
 */
public record Rehearsed(String name, String reason, List<TimelineRow> rows, List<String> unmet) {
  public Rehearsed {
    rows = List.copyOf(rows);
    unmet = List.copyOf(unmet);
  }
}
