package keenward.files.table;

import java.util.Locale;
import keenward.files.Problem;

/** Reads a table from a file: a workbook by its first bytes, else text with separators. */
public final class TableReader {

  private TableReader() {}

  /** Reads the bytes of a file. */
  public static TableReading read(String fileName, byte[] bytes) {
    if (bytes.length > TableLimits.BYTES) {
      return TableReading.refused(
          problem(
              fileName,
              1,
              "the file is larger than 8 MiB",
              "a list of zones",
              "name the right file"));
    }
    if (bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] == 3 && bytes[3] == 4) {
      return WorkbookReader.read(fileName, bytes);
    }
    if (bytes.length > 1 && (bytes[0] & 0xFF) == 0xD0 && (bytes[1] & 0xFF) == 0xCF) {
      return TableReading.refused(
          problem(
              fileName,
              1,
              "this is a workbook of the old binary kind",
              "a .xlsx, .csv or .tsv file",
              "save it as .xlsx or .csv"));
    }
    if (fileName.toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      return TableReading.refused(
          problem(
              fileName,
              1,
              "this is no workbook",
              "a .xlsx file",
              "save it again from the spreadsheet"));
    }
    return SeparatedReader.read(fileName, bytes);
  }

  static Problem problem(String file, int line, String what, String expected, String remedy) {
    return new Problem(file, line, 1, what, expected, remedy);
  }
}
