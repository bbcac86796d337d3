package keenward.files.zonelist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.UnplacedRow;
import keenward.core.plan.ZoneResponse;
import keenward.files.QuotedText;
import keenward.files.table.Table;
import keenward.files.table.TableRow;

/**
 * Understands a technician's list of zones. Every cell ends in the plan, in a note of its zone, in
 * a comment, or in an unplaced row; every guess is said.
 */
public final class ZoneListReader {

  private static final int LONGEST_NAME = 60;
  private static final int LONGEST_UNPLACED = 4000;
  private static final int MOST_ZONE = 99_999;

  /** A number with what may stand before it: "Zone 5", "Z05". */
  private static final Pattern PREFIXED =
      Pattern.compile("(?i)(?:zone|zona|zn|z|no|nr)[ .:]*0*([0-9]{1,5})\\.?");

  private static final Pattern LABEL = Pattern.compile("([^:]{2,30}):\\s*(.*)");

  private final Table table;
  private final KnownWords words;
  private final List<ListNote> notes = new ArrayList<>();
  private final List<ListedZone> zones = new ArrayList<>();
  private final List<UnplacedRow> unplaced = new ArrayList<>();
  private final List<String> comments = new ArrayList<>();
  private final Map<Integer, Integer> rowOfZone = new HashMap<>();
  private final Set<String> partitions = new LinkedHashSet<>();
  private final Columns columns;
  private String site = "";

  private ZoneListReader(Table table, ListMap map) {
    this.table = table;
    this.words = KnownWords.with(map);
    table.notes().forEach(note -> notes.add(new ListNote(0, "", ListNote.Kind.READ, note)));
    this.columns = Columns.of(table, map, words, notes);
  }

  /** Understands a table as far as it can be. */
  public static ZoneList read(Table table, ListMap map) {
    ZoneListReader reader = new ZoneListReader(table, map);
    return reader.read();
  }

  private ZoneList read() {
    for (int i = 0; i < columns.firstRow(); i++) {
      title(table.rows().get(i), i == columns.firstRow() - 1);
    }
    List<TableRow> rows = table.rows().subList(columns.firstRow(), table.rows().size());
    rows.forEach(this::partitionsOf);
    boolean numbered =
        columns
            .find(Column.NUMBER)
            .map(column -> rows.stream().anyMatch(row -> !row.cell(column).isEmpty()))
            .orElse(false);
    if (!numbered && !rows.isEmpty()) {
      note(
          0,
          "",
          ListNote.Kind.GUESS,
          "no zone numbers: zones are numbered in the order of the list");
    }
    for (TableRow row : rows) {
      row(row, numbered);
    }
    zones.sort(Comparator.comparingInt(ListedZone::number));
    notes.sort(Comparator.comparingInt(ListNote::row));
    return new ZoneList(site, zones, unplaced, comments, notes);
  }

  /** A row above the list: it may name the site. */
  private void title(TableRow row, boolean isHead) {
    List<String> cells = row.cells().stream().filter(cell -> !cell.isEmpty()).toList();
    comments.add("row " + row.number() + (isHead ? ", heads: " : ": ") + String.join(" | ", cells));
    if (isHead || !site.isEmpty()) {
      return;
    }
    for (int i = 0; i < cells.size(); i++) {
      Matcher label = LABEL.matcher(cells.get(i));
      boolean inside = label.matches() && isSite(label.group(1)) && !label.group(2).isEmpty();
      if (inside) {
        site = label.group(2);
      } else if (isSite(cells.get(i)) && i + 1 < cells.size()) {
        site = cells.get(i + 1);
      }
      if (!site.isEmpty()) {
        note(
            row.number(),
            "",
            ListNote.Kind.GUESS,
            "'" + site + "' is taken for the name of the site");
        return;
      }
    }
  }

  private static boolean isSite(String label) {
    Vocabulary.Reading<Boolean> reading = Words.SITE.read(label);
    return reading.rest().isEmpty() && !reading.found().isEmpty();
  }

  private void partitionsOf(TableRow row) {
    partitionNames(cell(row, Column.PARTITION)).forEach(partitions::add);
  }

  /** Names of partitions in a cell; none for "all", for dashes and for nothing. */
  static List<String> partitionNames(String cell) {
    if (Plain.words(cell).isEmpty() || isAll(cell)) {
      return List.of();
    }
    List<String> names = new ArrayList<>();
    for (String part : cell.split("[,;/+&]", -1)) {
      if (!part.isBlank()) {
        names.add(part.strip());
      }
    }
    return names;
  }

  static boolean isAll(String cell) {
    Vocabulary.Reading<Boolean> reading = Words.ALL.read(cell);
    return reading.rest().isEmpty() && !reading.found().isEmpty();
  }

  private String cell(TableRow row, Column column) {
    return columns.find(column).map(row::cell).orElse("");
  }

  private void row(TableRow row, boolean numbered) {
    if (isHeadAgain(row)) {
      comments.add("row " + row.number() + ", heads again");
      return;
    }
    if (isSpare(row)) {
      comments.add("row " + row.number() + ", spare: " + whole(row));
      note(row.number(), "", ListNote.Kind.READ, "spare, kept as a comment");
      return;
    }
    Optional<Integer> number =
        numbered ? number(row) : Optional.of(zones.size() + unplaced.size() + 1);
    if (number.isEmpty()) {
      return;
    }
    Integer before = rowOfZone.putIfAbsent(number.get(), row.number());
    if (before != null) {
      unplaced(
          row, Column.NUMBER, "zone " + number.get() + " is there already, from row " + before);
      return;
    }
    ZoneRow reading = new ZoneRow(row, columns, words, List.copyOf(partitions), notes);
    Optional<ListedZone> zone = reading.zone(number.get());
    zone.ifPresentOrElse(
        zones::add,
        () -> {
          rowOfZone.remove(number.get());
          unplaced(row, Column.RESPONSE, reading.whyNot());
        });
  }

  private boolean isHeadAgain(TableRow row) {
    return columns.firstRow() > 0
        && row.cells().equals(table.rows().get(columns.firstRow() - 1).cells());
  }

  /** Whether a row holds no zone on purpose: a number at most, and a word such as spare. */
  private boolean isSpare(TableRow row) {
    Optional<Integer> numberColumn = columns.find(Column.NUMBER);
    boolean any = false;
    for (int i = 0; i < row.cells().size(); i++) {
      String cell = row.cell(i);
      if (Plain.words(cell).isEmpty() || numberColumn.equals(Optional.of(i))) {
        continue;
      }
      Vocabulary.Reading<Boolean> reading = Words.SPARE.read(cell);
      if (!reading.rest().isEmpty()) {
        return false;
      }
      any = true;
    }
    return any || (numberColumn.isPresent() && !row.cell(numberColumn.get()).isEmpty());
  }

  private Optional<Integer> number(TableRow row) {
    String cell = cell(row, Column.NUMBER);
    Matcher plain = Columns.NUMBER.matcher(cell);
    Matcher prefixed = PREFIXED.matcher(cell);
    String digits = plain.matches() ? plain.group(1) : prefixed.matches() ? prefixed.group(1) : "";
    if (!digits.isEmpty()) {
      int number = Integer.parseInt(digits);
      if (number >= 1 && number <= MOST_ZONE) {
        return Optional.of(number);
      }
    }
    unplaced(row, Column.NUMBER, whyNoNumber(cell));
    return Optional.empty();
  }

  private static String whyNoNumber(String cell) {
    if (cell.isEmpty()) {
      return "no zone number";
    }
    if (cell.matches("(?i)0x[0-9a-f]{1,4}")) {
      return QuotedText.of(cell)
          + " may mean zone "
          + Integer.parseInt(cell.substring(2), 16)
          + ", as a hexadecimal number, or another";
    }
    return QuotedText.of(cell) + " is not one zone number from 1 to " + MOST_ZONE;
  }

  private void unplaced(TableRow row, Column column, String why) {
    String text = whole(row);
    unplaced.add(
        new UnplacedRow(
            text.length() <= LONGEST_UNPLACED ? text : text.substring(0, LONGEST_UNPLACED), why));
    note(
        row.number(),
        columns.find(column).map(columns.heads()::get).orElse(""),
        ListNote.Kind.PROBLEM,
        why + "; kept in unplaced:");
  }

  static String whole(TableRow row) {
    return row.cells().stream().collect(Collectors.joining("; ")).replaceAll("(; )+$", "");
  }

  private void note(int row, String column, ListNote.Kind kind, String text) {
    notes.add(new ListNote(row, column, kind, text));
  }

  /** The name cut to what a plan can hold. */
  static String shortName(String name) {
    return name.length() <= LONGEST_NAME
        ? name
        : name.substring(
                    0,
                    name.offsetByCodePoints(0, Math.min(57, name.codePointCount(0, name.length()))))
                .strip()
            + "...";
  }

  /** What a kind of sensor does nearly everywhere. */
  static Optional<ZoneResponse> usual(DeviceKind kind) {
    return switch (kind) {
      case SMOKE, HEAT, CALL_POINT -> Optional.of(ZoneResponse.FIRE);
      case CARBON_MONOXIDE_DETECTOR -> Optional.of(ZoneResponse.CARBON_MONOXIDE);
      case HOLD_UP_BUTTON -> Optional.of(ZoneResponse.HOLD_UP);
      case MEDICAL_BUTTON -> Optional.of(ZoneResponse.MEDICAL);
      case LID -> Optional.of(ZoneResponse.TAMPER);
      case TEMPERATURE, WATER -> Optional.of(ZoneResponse.TECHNICAL);
      case KEY_SWITCH_CONTACT -> Optional.of(ZoneResponse.KEY_SWITCH);
      case MOTION, DUAL_MOTION -> Optional.of(ZoneResponse.FOLLOWER);
      case CONTACT, CURTAIN, BEAM, GLASS_BREAK, SHOCK -> Optional.of(ZoneResponse.PERIMETER);
      default -> Optional.empty();
    };
  }
}
