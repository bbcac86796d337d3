package keenward.core.rehearsal.scenario;

import java.util.List;

/**
 * Everything that happened in a rehearsal, in order.
 *
 * @param rows the rows
 */
public record Timeline(List<Row> rows) {

  public Timeline {
    rows = List.copyOf(rows);
  }

  /**
   * As text: a line a row with time, kind and what happened, and under it, where wanted, the
   * reason.
   *
   * @param withReasons whether to tell the reasons
   */
  public String text(boolean withReasons) {
    int clockWidth = 0;
    int kindWidth = 0;
    for (Row row : rows) {
      clockWidth = Math.max(clockWidth, row.clock().length());
      kindWidth = Math.max(kindWidth, row.kind().word().length());
    }
    StringBuilder text = new StringBuilder();
    for (Row row : rows) {
      padded(text, row.clock(), clockWidth + 2);
      padded(text, row.kind().word(), kindWidth + 2);
      text.append(row.what()).append('\n');
      if (withReasons && !row.reason().isEmpty()) {
        text.append(" ".repeat(clockWidth + kindWidth + 4));
        text.append(row.reason()).append('\n');
      }
    }
    return text.toString();
  }

  private static void padded(StringBuilder text, String word, int width) {
    text.append(word).append(" ".repeat(Math.max(width - word.length(), 1)));
  }
}
