package keenward.files.zonelist;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import keenward.files.table.Table;
import keenward.files.table.TableRow;

/**
 * What each column of a list holds: by the heads of the columns, by what a person says, else by
 * what stands in them.
 *
 * @param firstRow index of the first row of the list itself
 * @param meanings what the columns hold, by their index from 0
 * @param heads names of the columns for people: the head, or the letter
 */
record Columns(int firstRow, Map<Integer, Column> meanings, List<String> heads) {

  private static final int ROWS_OF_TITLES = 30;
  private static final int ROWS_LOOKED_AT = 200;
  private static final double MOST_OF_THEM = 0.5;
  static final Pattern NUMBER = Pattern.compile("0*([0-9]{1,5})\\.?");

  Columns {
    meanings = Map.copyOf(meanings);
    heads = List.copyOf(heads);
  }

  /** The column that holds something, when there is one. */
  Optional<Integer> find(Column column) {
    return new TreeMap<>(meanings)
        .entrySet().stream()
            .filter(entry -> entry.getValue() == column)
            .map(Map.Entry::getKey)
            .findFirst();
  }

  /** The letter of a column from 0, as spreadsheets have it. */
  static String letter(int column) {
    return column < 26
        ? String.valueOf((char) ('A' + column))
        : letter(column / 26 - 1) + (char) ('A' + column % 26);
  }

  static Columns of(Table table, ListMap map, KnownWords words, List<ListNote> notes) {
    return new Finder(table, map, words, notes).find();
  }

  private static final class Finder {
    private final Table table;
    private final ListMap map;
    private final KnownWords words;
    private final List<ListNote> notes;
    private final Map<Integer, Column> meanings = new LinkedHashMap<>();
    private final List<String> heads = new ArrayList<>();
    private int headRow;

    Finder(Table table, ListMap map, KnownWords words, List<ListNote> notes) {
      this.table = table;
      this.map = map;
      this.words = words;
      this.notes = notes;
    }

    Columns find() {
      int head = head();
      for (int column = 0; column < table.width(); column++) {
        String text = head < 0 ? "" : table.rows().get(head).cell(column);
        heads.add(text.isEmpty() ? "column " + letter(column) : "'" + text + "'");
        said(column, text)
            .or(() -> byHead(text))
            .ifPresent(meaning -> take(heads.size() - 1, meaning));
      }
      headRow = head < 0 ? 0 : table.rows().get(head).number();
      boolean known = head >= 0;
      if (!known) {
        notes.add(
            new ListNote(
                0,
                "",
                ListNote.Kind.GUESS,
                "no row of heads was found: columns are taken by what stands in them"));
      }
      weigh(head + 1, known);
      return new Columns(head + 1, meanings, heads);
    }

    private void take(int column, Column meaning) {
      // Of two columns for one thing the first counts; the other is kept as notes.
      boolean taken = meaning != Column.NOTE && meanings.containsValue(meaning);
      meanings.put(column, taken ? Column.NOTE : meaning);
    }

    private int head() {
      if (map.headRow().isPresent()) {
        for (int i = 0; i < table.rows().size(); i++) {
          if (table.rows().get(i).number() == map.headRow().get()) {
            return i;
          }
        }
        notes.add(
            new ListNote(
                0,
                "",
                ListNote.Kind.PROBLEM,
                "there is nothing in row "
                    + map.headRow().get()
                    + ", which the map names as that of the heads"));
      }
      int best = -1;
      int most = 1;
      for (int i = 0; i < Math.min(ROWS_OF_TITLES, table.rows().size()); i++) {
        int score = 0;
        for (String cell : table.rows().get(i).cells()) {
          if (said(-1, cell).or(() -> byHead(cell)).isPresent()) {
            score++;
          }
        }
        if (score > most) {
          most = score;
          best = i;
        }
      }
      return best;
    }

    private Optional<Column> said(int column, String head) {
      return map.columns().entrySet().stream()
          .filter(entry ->
              (!head.isEmpty() && Plain.text(entry.getKey()).equals(Plain.text(head)))
                  || (column >= 0 && entry.getKey().equals(letter(column))))
          .map(Map.Entry::getValue)
          .findFirst();
    }

    private static Optional<Column> byHead(String head) {
      Vocabulary.Reading<Column> reading = Words.COLUMNS.read(head);
      return reading.rest().isEmpty() && reading.meanings().size() == 1
          ? Optional.of(reading.meanings().getFirst())
          : Optional.empty();
    }

    /** Looks at what stands in the columns that the heads leave open, or name in a doubtful way. */
    private void weigh(int first, boolean known) {
      Map<Column, Integer> best = new EnumMap<>(Column.class);
      Map<Column, Double> share = new EnumMap<>(Column.class);
      for (int column = 0; column < table.width(); column++) {
        Column head = meanings.get(column);
        // "Type" may be the type of the zone or of the sensor.
        boolean doubtful = head == Column.RESPONSE || head == Column.DEVICE;
        if (head != null && !doubtful) {
          continue;
        }
        for (Column meaning : List.of(Column.NUMBER, Column.RESPONSE, Column.DEVICE)) {
          double part = share(column, first, meaning);
          boolean isOpen = head == meaning || !meanings.containsValue(meaning) || head == null;
          if (isOpen && part > share.getOrDefault(meaning, MOST_OF_THEM)) {
            share.put(meaning, part);
            best.put(meaning, column);
          }
        }
      }
      best.forEach((meaning, column) -> settle(meaning, column));
      if (!known) {
        widestWords(first).ifPresent(column -> guess(column, Column.NAME));
      }
      for (int column = 0; column < table.width(); column++) {
        meanings.putIfAbsent(column, Column.NOTE);
      }
    }

    private void settle(Column meaning, int column) {
      Column head = meanings.get(column);
      if (head != meaning && !meanings.containsValue(meaning)) {
        guess(column, meaning);
      }
    }

    private void guess(int column, Column meaning) {
      meanings.put(column, meaning);
      notes.add(
          new ListNote(
              headRow,
              heads.get(column),
              ListNote.Kind.GUESS,
              "taken for the " + meaning.word() + " by what stands in it"));
    }

    private double share(int column, int first, Column meaning) {
      int filled = 0;
      int fitting = 0;
      for (TableRow row : looked(first)) {
        String cell = row.cell(column);
        if (!cell.isEmpty()) {
          filled++;
          fitting += fits(cell, meaning) ? 1 : 0;
        }
      }
      return filled == 0 ? 0 : (double) fitting / filled;
    }

    private boolean fits(String cell, Column meaning) {
      return switch (meaning) {
        case NUMBER -> NUMBER.matcher(cell).matches();
        case RESPONSE -> !words.responses().read(cell).found().isEmpty();
        case DEVICE -> !words.kinds().read(cell).found().isEmpty();
        default -> false;
      };
    }

    private Optional<Integer> widestWords(int first) {
      int best = -1;
      long most = 0;
      for (int column = 0; column < table.width(); column++) {
        int at = column;
        if (!meanings.containsKey(column)) {
          long letters =
              looked(first).stream()
                  .mapToLong(row -> row.cell(at).chars().filter(Character::isLetter).count())
                  .sum();
          if (letters > most) {
            most = letters;
            best = column;
          }
        }
      }
      return best < 0 ? Optional.empty() : Optional.of(best);
    }

    private List<TableRow> looked(int first) {
      return table
          .rows()
          .subList(
              Math.min(first, table.rows().size()),
              Math.min(first + ROWS_LOOKED_AT, table.rows().size()));
    }
  }
}
