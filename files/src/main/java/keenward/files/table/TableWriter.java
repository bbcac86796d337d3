package keenward.files.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes tables for spreadsheets. No cell is ever run as a formula: what could be one is marked as
 * text, and every cell of a workbook is text.
 */
public final class TableWriter {

  /** What tells spreadsheets that a CSV file is in UTF-8. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** Columns are as wide as their longest text, within reason. */
  private static final int WIDEST = 60;

  private TableWriter() {}

  /** CSV (RFC 4180) in UTF-8 with byte order mark. */
  public static byte[] csv(List<List<String>> rows) {
    StringBuilder text = new StringBuilder(BYTE_ORDER_MARK);
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      for (List<String> row : rows) {
        printer.printRecord(row.stream().map(Cells::harmless).toList());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing into memory", impossible);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * A workbook; the first row of each sheet is its head.
   *
   * @param sheets rows by name of the sheet, of at most 31 characters
   * @param program name of the program, as the workbook records it
   */
  public static byte[] xlsx(Map<String, List<List<String>>> sheets, String program) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(bytes, program, null)) {
      for (Map.Entry<String, List<List<String>>> sheet : sheets.entrySet()) {
        fill(workbook.newWorksheet(sheet.getKey()), sheet.getValue());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing into memory", impossible);
    }
    return bytes.toByteArray();
  }

  private static void fill(Worksheet page, List<List<String>> rows) {
    page.freezePane(0, 1);
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        page.value(row, column, rows.get(row).get(column));
        page.style(row, column).format("@").set();
      }
    }
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    for (int column = 0; column < width; column++) {
      page.width(column, widest(rows, column) + 2.0);
    }
    if (width > 0) {
      page.range(0, 0, 0, width - 1).style().bold().format("@").set();
    }
  }

  private static int widest(List<List<String>> rows, int column) {
    return rows.stream()
        .filter(row -> column < row.size())
        .mapToInt(row -> Math.min(WIDEST, row.get(column).length()))
        .max()
        .orElse(0);
  }
}
