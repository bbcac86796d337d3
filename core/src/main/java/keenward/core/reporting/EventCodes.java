package keenward.core.reporting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The DC-05 event codes (1999.09 edition), looked up by number. Later editions add codes. */
public final class EventCodes {
  /** Where the table comes from. */
  public static final String SOURCE = "DC-05 (1999.09), event codes";

  private static final int LIMIT = 1000;
  private static final List<EventCode> ALL = read(EventTable.ROWS);
  private static final int[] PLACE = places(ALL);

  private EventCodes() {}

  /** Every code in ascending order. */
  public static List<EventCode> list() {
    return ALL;
  }

  /** The code with this number, when the table has it. */
  public static Optional<EventCode> find(int number) {
    if (number < 0 || number >= LIMIT || PLACE[number] < 0) {
      return Optional.empty();
    }
    return Optional.of(ALL.get(PLACE[number]));
  }

  /**
   * The code with this number.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static EventCode get(int number) {
    return find(number)
        .orElseThrow(() -> new IllegalArgumentException("no DC-05 event code " + number));
  }

  /** Meaning of a code, or a statement that the table does not hold it. */
  public static String meaning(int number) {
    return find(number).map(EventCode::meaning).orElse("code not in DC-05 (1999.09)");
  }

  private static int[] places(List<EventCode> codes) {
    int[] places = new int[LIMIT];
    Arrays.fill(places, -1);
    for (int index = 0; index < codes.size(); index++) {
      places[codes.get(index).number()] = index;
    }
    return places;
  }

  private static List<EventCode> read(String rows) {
    List<EventCode> codes = new ArrayList<>();
    String group = "";
    int from = 0;
    while (from < rows.length()) {
      int to = rows.indexOf('\n', from);
      String row = rows.substring(from, to);
      if (row.startsWith("# ")) {
        group = row.substring(2);
      } else {
        codes.add(code(row, group));
      }
      from = to + 1;
    }
    return List.copyOf(codes);
  }

  private static EventCode code(String row, String group) {
    int subject = row.indexOf(' ') + 1;
    int use = row.indexOf(' ', subject) + 1;
    int standing = row.indexOf(' ', use) + 1;
    int meaning = row.indexOf(' ', standing) + 1;
    return new EventCode(
        Integer.parseInt(row.substring(0, subject - 1)),
        row.substring(meaning),
        group,
        subject(row.substring(subject, use - 1)),
        use(row.substring(use, standing - 1)),
        standing(row.substring(standing, meaning - 1)));
  }

  private static Subject subject(String word) {
    for (Subject subject : Subject.values()) {
      if (subject.word().equals(word)) {
        return subject;
      }
    }
    throw new IllegalStateException("event table: subject " + word);
  }

  private static QualifierUse use(String word) {
    for (QualifierUse use : QualifierUse.values()) {
      if (use.word().equals(word)) {
        return use;
      }
    }
    throw new IllegalStateException("event table: use " + word);
  }

  private static Standing standing(String word) {
    for (Standing standing : Standing.values()) {
      if (standing.word().equals(word)) {
        return standing;
      }
    }
    throw new IllegalStateException("event table: standing " + word);
  }
}
