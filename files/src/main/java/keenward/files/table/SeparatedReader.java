package keenward.files.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads text with separators, whichever they are. */
final class SeparatedReader {

  private static final char[] SEPARATORS = {';', '\t', '|', ','};
  private static final int ROWS_LOOKED_AT = 60;

  private SeparatedReader() {}

  static TableReading read(String fileName, byte[] bytes) {
    Optional<TextDecoder.Decoded> decoded = TextDecoder.decode(bytes);
    if (decoded.isEmpty()) {
      return TableReading.refused(
          TableReader.problem(
              fileName,
              1,
              "this is no text: it holds zero bytes",
              "a .csv, .tsv or .xlsx file",
              "save the list from the spreadsheet as .csv or .xlsx"));
    }
    String text = decoded.get().text();
    char separator = separator(text);
    List<TableRow> rows = new ArrayList<>();
    int line = 1;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format(separator))) {
      for (CSVRecord record : parser) {
        Optional<TableReading> tooMuch = tooMuch(fileName, line, rows.size(), record);
        if (tooMuch.isPresent()) {
          return tooMuch.get();
        }
        TableRow row =
            new TableRow(line, record.stream().map(Cells::tidy).map(Cells::unmarked).toList());
        if (!row.isEmpty()) {
          rows.add(row);
        }
        line = (int) parser.getCurrentLineNumber() + 1;
      }
    } catch (IOException | UncheckedIOException | IllegalStateException fault) {
      return TableReading.refused(
          TableReader.problem(
              fileName,
              line,
              "a quotation mark that opens here is not closed as it should be",
              "a closing quotation mark before the separator",
              "close it, or take the quotation marks out"));
    }
    return TableReading.of(
        new Table(
            rows, List.of("encoding " + decoded.get().encoding(), "separator " + name(separator))));
  }

  private static Optional<TableReading> tooMuch(
      String fileName, int line, int rows, CSVRecord record) {
    String what =
        rows >= TableLimits.ROWS
            ? "more than " + TableLimits.ROWS + " rows"
            : record.size() > TableLimits.COLUMNS
                ? record.size() + " columns"
                : record.stream().anyMatch(cell -> cell.length() > TableLimits.CHARACTERS_A_CELL)
                    ? "a cell of more than " + TableLimits.CHARACTERS_A_CELL + " characters"
                    : "";
    return what.isEmpty()
        ? Optional.empty()
        : Optional.of(
            TableReading.refused(
                TableReader.problem(
                    fileName,
                    line,
                    what,
                    "a list of zones",
                    "check for a quotation mark that is not closed, or name the right file")));
  }

  /** The separator that makes most rows as wide as each other, and wider than one cell. */
  private static char separator(String text) {
    char best = ',';
    long most = 0;
    for (char separator : SEPARATORS) {
      long score = score(text, separator);
      if (score > most) {
        most = score;
        best = separator;
      }
    }
    return best;
  }

  private static long score(String text, char separator) {
    int[] rowsOfWidth = new int[TableLimits.COLUMNS + 2];
    int rows = 0;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format(separator))) {
      for (CSVRecord record : parser) {
        rowsOfWidth[Math.min(record.size(), TableLimits.COLUMNS + 1)]++;
        if (++rows == ROWS_LOOKED_AT) {
          break;
        }
      }
    } catch (IOException | UncheckedIOException | IllegalStateException fault) {
      // Said with its line when the file is read by the separator chosen; so far it counts.
      rows++;
    }
    long score = 0;
    for (int width = 2; width < rowsOfWidth.length; width++) {
      score = Math.max(score, rowsOfWidth[width] * 1000L + width);
    }
    return score;
  }

  private static CSVFormat format(char separator) {
    return CSVFormat.DEFAULT
        .builder()
        .setDelimiter(separator)
        .setIgnoreEmptyLines(false)
        .setIgnoreSurroundingSpaces(true)
        .get();
  }

  private static String name(char separator) {
    return switch (separator) {
      case ';' -> "semicolon";
      case '\t' -> "tab";
      case '|' -> "bar";
      default -> "comma";
    };
  }
}
