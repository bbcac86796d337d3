package keenward.files.table;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableReaderTest {

  private static Table read(String name, byte[] bytes) {
    TableReading reading = TableReader.read(name, bytes);
    assertThat(reading.problems()).isEmpty();
    return reading.table().orElseThrow();
  }

  private static String refusal(String name, byte[] bytes) {
    TableReading reading = TableReader.read(name, bytes);
    assertThat(reading.table()).isEmpty();
    return reading.problems().getFirst().message();
  }

  @ParameterizedTest
  @ValueSource(strings = {";", ",", "\t", "|"})
  void findsTheSeparator(String separator) {
    String text =
        """
        No;Name;Kind
        1;Hall;motion
        2;Door;contact
        """
            .replace(";", separator);
    Table table = read("list.csv", text.getBytes(UTF_8));
    assertThat(table.rows()).hasSize(3);
    assertThat(table.rows().get(1).cells()).containsExactly("1", "Hall", "motion");
  }

  @Test
  void findsTheEncoding() {
    String text =
        """
        No;Name
        1;Tür Süd
        """;
    assertThat(read("a", text.getBytes(UTF_8)).rows().get(1).cell(1)).isEqualTo("Tür Süd");
    assertThat(read("a", ("\uFEFF" + text).getBytes(UTF_8)).rows().getFirst().cell(0))
        .isEqualTo("No");
    assertThat(read("a", ("\uFEFF" + text).getBytes(UTF_16LE)).rows().get(1).cell(1))
        .isEqualTo("Tür Süd");
    assertThat(read("a", ("\uFEFF" + text).getBytes(UTF_16BE)).rows().get(1).cell(1))
        .isEqualTo("Tür Süd");
    assertThat(read("a", text.getBytes(UTF_16LE)).notes().getFirst()).contains("guessed");
    Table windows = read("a", text.getBytes(Charset.forName("windows-1252")));
    assertThat(windows.rows().get(1).cell(1)).isEqualTo("Tür Süd");
    assertThat(windows.notes().getFirst()).contains("Windows-1252, guessed");
  }

  @Test
  void keepsLineNumbersPastEmptyLinesAndLinesInQuotes() {
    Table table = read("a.csv", "No,Name\n\n1,\"two\nlines\"\n2,x\n".getBytes(UTF_8));
    assertThat(table.rows()).extracting(TableRow::number).containsExactly(1, 3, 5);
    assertThat(table.rows().get(1).cell(1)).isEqualTo("two lines");
  }

  @Test
  void saysWhereAQuotationMarkIsNotClosed() {
    assertThat(refusal("a.csv", "No,Name\n1,\"Hall\n2,Door\n".getBytes(UTF_8)))
        .startsWith("a.csv:2:1: a quotation mark");
  }

  @Test
  void refusesWhatIsNoList() {
    assertThat(refusal("a.csv", new byte[] {1, 0, 0, 7, 0, 0})).contains("zero bytes");
    assertThat(refusal("a.xlsx", "No;Name".getBytes(UTF_8))).contains("no workbook");
    assertThat(refusal("a.xls", new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11}))
        .contains("old binary");
    assertThat(refusal("a.csv", "x,".repeat(500).getBytes(UTF_8))).contains("501 columns");
    assertThat(refusal("a.csv", ("a,b\n" + "x".repeat(5000) + ",y\n").getBytes(UTF_8)))
        .contains("4000 characters");
    assertThat(refusal("a.csv", "a,b\n".repeat(20_001).getBytes(UTF_8))).contains("20000 rows");
    assertThat(refusal("a.csv", new byte[9_000_000])).contains("8 MiB");
  }

  @Test
  void refusesAWorkbookThatUnpacksWithoutEnd() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
      byte[] block = new byte[1 << 20];
      for (int i = 0; i < 80; i++) {
        zip.write(block);
      }
    }
    assertThat(bytes.size()).isLessThan(1 << 20);
    assertThat(refusal("bomb.xlsx", bytes.toByteArray())).contains("unpacks to more than 64 MiB");
  }

  @Test
  void refusesABrokenWorkbook() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
      zip.write("<workbook><sheets><sheet".getBytes(UTF_8));
    }
    assertThat(refusal("a.xlsx", bytes.toByteArray())).startsWith("a.xlsx:1:1: the workbook");
    assertThat(refusal("a.xlsx", new byte[] {'P', 'K', 3, 4, 0, 0})).contains("the workbook");
  }

  @Test
  void readsTheSheetWithMostRowsWithDatesFormulasAndMergedTitles() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(bytes, "Test", null)) {
      Worksheet cover = workbook.newWorksheet("Cover");
      cover.value(0, 0, "Nothing to see");
      Worksheet sheet = workbook.newWorksheet("Zones");
      sheet.value(0, 0, "Site");
      sheet.value(0, 1, "Cliff Nursery");
      sheet.range(0, 1, 0, 3).merge();
      sheet.value(2, 0, "No");
      sheet.value(2, 1, "Name");
      sheet.value(2, 2, "Fitted on");
      sheet.value(3, 0, 1);
      sheet.value(3, 1, "Front  door ");
      sheet.value(3, 2, LocalDate.of(2026, 10, 5));
      sheet.style(3, 2).format("yyyy-MM-dd").set();
      sheet.value(4, 0, 2.5);
      sheet.value(4, 1, true);
      sheet.hideColumn(2);
    }
    Table table = read("a.xlsx", bytes.toByteArray());
    assertThat(table.notes())
        .containsExactly("sheet 'Zones'", "sheet 'Cover' with 1 rows is not read");
    assertThat(table.rows()).extracting(TableRow::number).containsExactly(1, 3, 4, 5);
    assertThat(table.rows().getFirst().cell(1)).isEqualTo("Cliff Nursery");
    assertThat(table.rows().get(2).cells()).containsExactly("1", "Front door", "2026-10-05");
    assertThat(table.rows().get(3).cells()).startsWith("2.5", "yes");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"=1+1", "+49 30", "-Cellar", "@home", "'quoted", "'=twice", "plain", "a;b,\"c\""})
  void whatIsWrittenIsReadAgainAndNeverRun(String text) {
    List<List<String>> rows = List.of(List.of("A", "B"), List.of(text, "x"));
    byte[] csv = TableWriter.csv(rows);
    assertThat(read("a.csv", csv).rows().get(1).cells()).containsExactly(text, "x");
    assertThat(read("a.xlsx", TableWriter.xlsx(Map.of("S", rows), "Test")).rows().get(1).cells())
        .containsExactly(text, "x");
    for (String line : new String(csv, UTF_8).split("\r\n", -1)) {
      assertThat(line.replace("\uFEFF", "").replace("\"", ""))
          .doesNotStartWith("=")
          .doesNotMatch("[+@-].*");
    }
  }
}
