package keenward.files.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/**
 * Reads the sheet of a workbook (Office Open XML, ECMA-376) that holds most rows. Formulas give the
 * values that were stored with them; nothing is run.
 */
final class WorkbookReader {

  private WorkbookReader() {}

  static TableReading read(String fileName, byte[] bytes) {
    try {
      if (isTooLarge(bytes)) {
        return refused(fileName, "the workbook unpacks to more than 64 MiB");
      }
      // With formats, so that dates are known as such.
      try (ReadableWorkbook workbook =
          new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, false))) {
        return read(fileName, workbook);
      }
    } catch (TooMuch tooMuch) {
      return refused(fileName, tooMuch.what);
    } catch (IOException | UncheckedIOException | ExcelReaderException unreadable) {
      return refused(fileName, "the workbook cannot be read");
    } catch (RuntimeException unreadable) {
      // The reader answers broken parts of a workbook by whatever fails first.
      return refused(fileName, "the workbook is broken");
    }
  }

  private static final class TooMuch extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final String what;

    TooMuch(String what) {
      super(what);
      this.what = what;
    }
  }

  private static TableReading refused(String fileName, String what) {
    return TableReading.refused(
        TableReader.problem(
            fileName, 1, what, "a .xlsx file with a list of zones", "save it again, or as .csv"));
  }

  /**
   * Whether it unpacks to more than any list of zones needs: a small file may unpack to gigabytes.
   */
  private static boolean isTooLarge(byte[] bytes) throws IOException {
    try (ZipFile zip = ZipFile.builder().setByteArray(bytes).get()) {
      byte[] buffer = new byte[64 * 1024];
      long unpacked = 0;
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        try (InputStream stream = zip.getInputStream(entry)) {
          for (int read = stream.read(buffer); read > 0; read = stream.read(buffer)) {
            unpacked += read;
            if (unpacked > TableLimits.UNPACKED_BYTES) {
              return true;
            }
          }
        }
      }
      return false;
    }
  }

  private static TableReading read(String fileName, ReadableWorkbook workbook) throws IOException {
    List<TableRow> most = List.of();
    List<String> notes = new ArrayList<>();
    String chosen = "";
    for (Sheet sheet : workbook.getSheets().toList()) {
      List<TableRow> rows = rows(sheet);
      if (rows.size() > most.size()) {
        if (!most.isEmpty()) {
          notes.add(notRead(chosen, most));
        }
        most = rows;
        chosen = sheet.getName();
      } else if (!rows.isEmpty()) {
        notes.add(notRead(sheet.getName(), rows));
      }
    }
    if (most.isEmpty()) {
      return refused(fileName, "the workbook holds no cell with anything in it");
    }
    notes.addFirst("sheet '" + Cells.tidy(chosen) + "'");
    return TableReading.of(new Table(most, notes));
  }

  private static String notRead(String sheet, List<TableRow> rows) {
    return "sheet '" + Cells.tidy(sheet) + "' with " + rows.size() + " rows is not read";
  }

  private static List<TableRow> rows(Sheet sheet) throws IOException {
    List<TableRow> rows = new ArrayList<>();
    try (Stream<Row> stream = sheet.openStream()) {
      stream.forEach(row -> {
        if (rows.size() >= TableLimits.ROWS) {
          throw new TooMuch("more than " + TableLimits.ROWS + " rows");
        }
        if (row.getCellCount() > TableLimits.COLUMNS) {
          throw new TooMuch(row.getCellCount() + " columns");
        }
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
          cells.add(Optional.ofNullable(row.getCell(i)).map(WorkbookReader::text).orElse(""));
        }
        TableRow read = new TableRow(row.getRowNum(), cells);
        if (!read.isEmpty()) {
          rows.add(read);
        }
      });
    }
    return rows;
  }

  private static String text(Cell cell) {
    String text =
        switch (cell.getType()) {
          case NUMBER -> number(cell);
          case BOOLEAN -> cell.asBoolean() ? "yes" : "no";
          case FORMULA -> cell.getRawValue() == null ? "" : cell.getRawValue();
          case STRING -> cell.asString();
          case EMPTY -> "";
          case ERROR -> cell.getRawValue() == null ? "" : cell.getRawValue();
        };
    if (text == null) {
      return "";
    }
    if (text.length() > TableLimits.CHARACTERS_A_CELL) {
      throw new TooMuch("a cell of more than " + TableLimits.CHARACTERS_A_CELL + " characters");
    }
    return Cells.tidy(text);
  }

  private static String number(Cell cell) {
    String format = cell.getDataFormatString();
    if (format != null && isDate(format)) {
      LocalDateTime date = cell.asDate();
      return date.toLocalTime().toSecondOfDay() == 0
          ? date.toLocalDate().toString()
          : date.toString();
    }
    BigDecimal value = cell.asNumber();
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** Whether a number format is one of a date: day or year, outside quotes and brackets. */
  private static boolean isDate(String format) {
    String bare = format.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.", "");
    return bare.contains("y") || bare.contains("d");
  }
}
