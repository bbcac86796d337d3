package keenward.usecases.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.progress.Progress;
import keenward.core.progress.WorkStopped;
import keenward.core.rules.Severity;
import keenward.usecases.job.JobOptions;
import keenward.usecases.job.Keenward;
import keenward.usecases.job.SiteJob;
import keenward.usecases.order.FoundMemory;
import keenward.usecases.order.KeyIn;
import keenward.usecases.panel.PanelFinder;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFiles;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
