package keenward.files.table;

/** What a list of zones never exceeds; beyond, a file is a mistake or an attack. */
final class TableLimits {

  static final int BYTES = 8 * 1024 * 1024 - 1;
  static final int ROWS = 20_000;
  static final int COLUMNS = 200;
  static final int CHARACTERS_A_CELL = 4_000;

  /** Bytes of a workbook when unpacked. */
  static final long UNPACKED_BYTES = 64L * 1024 * 1024;

  private TableLimits() {}
}
