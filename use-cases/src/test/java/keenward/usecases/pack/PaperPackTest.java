package keenward.usecases.pack;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.progress.Progress;
import keenward.core.progress.WorkStopped;
import keenward.core.rules.Severity;
import keenward.files.table.TableWriter;
import keenward.usecases.job.JobOptions;
import keenward.usecases.job.Keenward;
import keenward.usecases.job.SiteJob;
import keenward.usecases.order.FoundMemory;
import keenward.usecases.order.KeyIn;
import keenward.usecases.panel.PanelFinder;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFiles;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaperPackTest {

  private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Keenward KEENWARD =
      new Keenward(new PanelFinder(HOME.resolve("panels")), "0.1.0");

  private static SiteJob bakery;
  private static SiteJob boathouse;

  @TempDir Path folder;

  @BeforeAll
  static void runTheDemo() throws BadInput {
    bakery = job(HOME.resolve("demo/bakery/quayside-bakery.site.yaml"));
    boathouse = job(HOME.resolve("demo/boathouse/weir-lane-boathouse.site.yaml"));
  }

  @Test
  void provesTheOrderOfTheBakery() {
    assertThat(bakery.keyIn()).isInstanceOf(KeyIn.Ordered.class);
    KeyIn.Ordered ordered = (KeyIn.Ordered) bakery.keyIn();
    assertThat(ordered.proof().proved()).isTrue();
    assertThat(ordered.hash()).matches("[0-9a-f]{64}");
    assertThat(ordered.order().groups())
        .extracting(group -> group.title())
        .contains("way in", "zone 26", "way out");
  }

  @Test
  void saysWhyTheBoathouseHasNoOrderYet() {
    KeyIn.Refused refused = (KeyIn.Refused) boathouse.keyIn();
    assertThat(refused.reasons())
        .anySatisfy(reason -> assertThat(reason.what()).contains("zone 9"));
  }

  @Test
  void findsNothingInTheBakeryButTheTwoDeliberateFaults() {
    assertThat(bakery.check().findings())
        .filteredOn(finding -> finding.severity() == Severity.ERROR)
        .extracting(finding -> finding.code())
        .containsExactlyInAnyOrder("PWR-01", "ENT-01");
  }

  @Test
  void rehearsesEveryStandardScenarioAsExpected() {
    for (SiteJob job : List.of(bakery, boathouse)) {
      assertThat(job.rehearsal().scenarios()).hasSizeGreaterThan(10);
      assertThat(job.rehearsal().scenarios())
          .allSatisfy(
              scenario -> assertThat(scenario.result().unmet()).as(scenario.name()).isEmpty());
    }
  }

  @Test
  void makesTheSameOrderEachTime() throws BadInput {
    SiteJob again = job(HOME.resolve("demo/bakery/quayside-bakery.site.yaml"));
    assertThat(((KeyIn.Ordered) again.keyIn()).hash())
        .isEqualTo(((KeyIn.Ordered) bakery.keyIn()).hash());
  }

  @Test
  void printsAPackWithEveryPaperAndEveryFontInside() throws IOException {
    byte[] bytes = PaperPack.pdf(bakery, Sheet.A4);
    try (PDDocument document = Loader.loadPDF(bytes)) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text)
          .contains(
              "Quayside Bakery",
              "Zone schedule",
              "Battery sheet",
              "Work order",
              "Test sheet",
              "Page 1 of")
          .contains(bakery.site().sha256().substring(0, 12));
      assertThat(document.getDocumentCatalog().getDocumentOutline()).isNotNull();
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
    }
    assertThat(PaperPack.pdf(bakery, Sheet.A4)).as("the same bytes each time").isEqualTo(bytes);
  }

  @ParameterizedTest
  @CsvSource({"A4, 595, 842", "LETTER, 612, 792"})
  void printsEveryPageInTheSizeAskedFor(Sheet sheet, float shortSide, float longSide)
      throws IOException {
    try (PDDocument document = Loader.loadPDF(PaperPack.pdf(boathouse, sheet))) {
      assertThat(document.getNumberOfPages()).isBetween(10, 60);
      for (PDPage page : document.getPages()) {
        float width = page.getMediaBox().getWidth();
        float height = page.getMediaBox().getHeight();
        // The renderer counts in whole pixels of 0.75 points.
        assertThat(Math.min(width, height)).isCloseTo(shortSide, within(1.5f));
        assertThat(Math.max(width, height)).isCloseTo(longSide, within(1.5f));
      }
    }
  }

  @Test
  void bearsACodeThatNamesPaperPlanAndDayAndNothingElse() throws Exception {
    try (PDDocument document = Loader.loadPDF(PaperPack.pdf(boathouse, Sheet.A4))) {
      assertThat(code(document, 0))
          .isEqualTo("KEENWARD 1 cover PLAN " + boathouse.site().sha256() + " ON 2026-11-25");
      assertThat(code(document, 1)).startsWith("KEENWARD 1 findings PLAN ");
    }
  }

  /** Reads the code off a page as a telephone would: from its picture. */
  private static String code(PDDocument document, int page) throws Exception {
    BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, 200);
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(
                new HybridBinarizer(
                    new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels))),
            Map.of(DecodeHintType.TRY_HARDER, true))
        .getText();
  }

  @Test
  void givesItsTablesToASpreadsheet() throws IOException {
    Path written = ResultFolder.write(bakery, folder, Sheet.A4, Map.of(), Progress.SILENT);
    Map<String, List<List<String>>> tables = PackTables.of(bakery);
    assertThat(tables.keySet())
        .containsExactly("findings", "zones", "loads", "battery", "key-in", "tests");
    try (InputStream stream = Files.newInputStream(written.resolve("tables.xlsx"));
        ReadableWorkbook workbook = new ReadableWorkbook(stream)) {
      for (org.dhatim.fastexcel.reader.Sheet sheet : workbook.getSheets().toList()) {
        List<List<String>> rows = tables.getOrDefault(sheet.getName(), List.of());
        assertThat(sheet.read()).hasSameSizeAs(rows);
        assertThat(sheet.read().get(1).getCellText(0)).isEqualTo(rows.get(1).getFirst());
      }
    }
    try (CSVParser parser =
        CSVParser.parse(
            Files.readString(written.resolve("tables/zones.csv")).substring(1),
            CSVFormat.RFC4180)) {
      assertThat(parser.getRecords().stream().map(CSVRecord::toList).toList())
          .isEqualTo(tables.get("zones"));
    }
    assertThat(tables.get("tests")).hasSize(bakery.testPlan().steps().size() + 1);
    assertThat(tables.getOrDefault("key-in", List.of()).get(1).get(4))
        .isEqualTo("hold leaf for 3 s");
  }

  @Test
  void showsHostileNamesAsTheyAreWritten() throws Exception {
    Path site =
        Files.writeString(
            folder.resolve("hostile.site.yaml"),
            """
            keenward: 1
            site: "<script>alert(1)</script> & Sons"
            zones:
              1: { name: "Door <b>A</b> & 'B'", response: entry-exit, device: contact }
              2: { name: "=SUM(A1)", response: follower, device: motion }
              3: { name: "Tür ü € ☃ 🔥", response: fire, device: smoke }
              4: { name: "%s", response: perimeter, device: contact }
            """
                .formatted("W".repeat(60)));
    SiteJob job = job(site);
    for (PaperPack.Entry entry : PaperPack.list(job)) {
      assertThat(paper(job, entry.name())).as(entry.name()).doesNotContain("<script>alert", "<b>A");
    }
    try (PDDocument document = Loader.loadPDF(PaperPack.pdf(job, Sheet.LETTER))) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text).contains("Door <b>A</b> & 'B'", "=SUM(A1)", "Tür ü €");
    }
    assertThat(
            new String(TableWriter.csv(PackTables.of(job).getOrDefault("zones", List.of())), UTF_8))
        .contains("'=SUM(A1)");
  }

  @Test
  void keepsAccountAndWeaknessesOffTheDoorLabel() {
    assertThat(paper(bakery, "door-label"))
        .contains("K-0001")
        .doesNotContain("0471", "Quayside Bakery</h1>");
    assertThat(PaperPack.list(bakery))
        .extracting(PaperPack.Entry::name)
        .contains(
            "findings",
            "drawing",
            "walks",
            "zone-schedule",
            "battery-sheet",
            "work-order",
            "test-sheet",
            "account-form",
            "owners-page",
            "door-label");
  }

  @Test
  void givesAPlanOfFiveLinesASensiblePack() throws Exception {
    Path site =
        Files.writeString(
            folder.resolve("kiosk.site.yaml"),
            """
            keenward: 1
            site: "Kiosk <script>alert(1)</script> {{x}}"
            zones:
              1: { name: "Door é שלום", response: entry-exit, device: contact }
              2: { name: Motion, response: follower, device: motion }
              3: { name: Till button, response: hold-up }
            """);
    SiteJob job = job(site);
    assertThat(job.keyIn()).isInstanceOf(KeyIn.ByHand.class);
    assertThat(PaperPack.list(job))
        .extracting(PaperPack.Entry::name)
        .contains("entry-sheet")
        .doesNotContain("work-order");
    assertThat(PaperPack.list(job))
        .allSatisfy(entry -> assertThat(paper(job, entry.name())).doesNotContain("<script>alert"));
    assertThat(paper(job, "entry-sheet").toLowerCase(java.util.Locale.ROOT)).contains("unproved");
    assertThat(paper(job, "account-form")).contains("not assessed");
    try (PDDocument document = Loader.loadPDF(PaperPack.pdf(job, Sheet.LETTER))) {
      assertThat(document.getNumberOfPages()).isBetween(5, 40);
    }
  }

  @Test
  void writesTheFolderAsAWhole() throws IOException {
    Path written =
        ResultFolder.write(
            boathouse, folder, Sheet.A4, Map.of("note.txt", "hello"), Progress.SILENT);
    assertThat(written.resolve("pack.pdf")).isNotEmptyFile();
    assertThat(written.resolve("papers/index.html")).isNotEmptyFile();
    assertThat(written.resolve("floor-1.svg")).content().startsWith("<svg");
    assertThat(written.resolve("note.txt")).hasContent("hello");
  }

  @Test
  void stopsWhenNobodyWaits() throws BadInput {
    var site = SiteFiles.load(HOME.resolve("demo/bakery/quayside-bakery.site.yaml"));
    assertThatThrownBy(() -> KEENWARD.job(site, JobOptions.on(DAY), (what, done, total) -> false))
        .isInstanceOf(WorkStopped.class);
  }

  @Test
  void asksForConsentOrProvesTheOrderWhereNothingIsKnown() throws BadInput {
    var site = SiteFiles.load(HOME.resolve("demo/bakery/quayside-bakery.site.yaml"));
    KeyIn keyIn =
        KEENWARD.keyIn(
            site,
            new JobOptions(DAY, null, null, new FoundMemory.Unknown(), Set.of()),
            Progress.SILENT);
    if (keyIn instanceof KeyIn.Refused refused) {
      assertThat(refused.reasons()).allSatisfy(reason -> assertThat(reason.remedy()).isNotBlank());
    } else {
      assertThat(((KeyIn.Ordered) keyIn).proof().proved()).isTrue();
    }
  }

  private static SiteJob job(Path path) throws BadInput {
    return KEENWARD.job(SiteFiles.load(path), JobOptions.on(DAY), Progress.SILENT);
  }

  private static String paper(SiteJob job, String name) {
    return PaperPack.html(job, name).orElseThrow();
  }
}
