package keenward.endtoend.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import keenward.endtoend.Repository;
import keenward.usecases.job.Keenward;
import keenward.usecases.panel.PanelFinder;
import keenward.web.Stage;
import keenward.web.Workbench;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page of the workbench over the demo sites, on a phone and on a desk. */
@InBrowser
class WorkbenchPagesTest {

  private static final int PHONE = 360;
  private static final String LONG_ORDER = "/sites/heron-lane-vets/order";
  private static final String TRACE = "/sites/weir-lane-boathouse/trace/1";

  private static Workbench workbench;

  @BeforeAll
  static void start() {
    Path root = Repository.root();
    workbench =
        Workbench.start(
            List.of(
                Path.of("../demo/bakery/quayside-bakery.site.yaml"),
                Path.of("../demo/boathouse/weir-lane-boathouse.site.yaml"),
                Path.of("../demo/clinic/heron-lane-vets.site.yaml")),
            new Keenward(new PanelFinder(root.resolve("panels")), "0.1.0"),
            Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC),
            0);
  }

  @AfterAll
  static void stop() {
    workbench.close();
  }

  @ParameterizedTest
  @ValueSource(ints = {PHONE, 1280, 1920})
  void fitsTheScreenAndRaisesNoError(int width, Page page) {
    List<String> errors = new ArrayList<>();
    page.onConsoleMessage(message -> {
      if (message.type().equals("error")) {
        errors.add(message.text());
      }
    });
    page.onPageError(errors::add);
    page.setViewportSize(width, 900);
    page.navigate(workbench.address());
    for (String path : paths()) {
      page.navigate(address(path));
      assertThat((int) page.evaluate("document.documentElement.scrollWidth"))
          .as("%s at %d px scrolls sideways", path, width)
          .isLessThanOrEqualTo(width);
      look(page, width + path);
    }
    assertThat(errors).isEmpty();
  }

  /** With {@code -Dlook=FOLDER}, every page is left there as a picture, to be looked at. */
  private static void look(Page page, String name) {
    String folder = System.getProperty("look");
    if (folder != null) {
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(Path.of(folder, name.replaceAll("\\W+", "-") + ".png")));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"LIGHT", "DARK"})
  void isUsableForEverybody(String scheme, Page page) {
    page.emulateMedia(
        new Page.EmulateMediaOptions()
            .setColorScheme(ColorScheme.valueOf(scheme))
            .setMedia(Media.SCREEN));
    page.setViewportSize(PHONE, 900);
    page.navigate(workbench.address());
    for (String path : paths()) {
      if (path.equals(LONG_ORDER)) {
        // Nine hundred steps of the same kind take minutes; the bakery's order has that kind too.
        continue;
      }
      page.navigate(address(path));
      assertThat(new AxeBuilder(page).analyze().getViolations())
          .as("%s in %s", path, scheme)
          .extracting(rule -> rule.getId() + " " + rule.getNodes().getFirst().getHtml())
          .isEmpty();
      look(page, scheme + path);
    }
  }

  @Test
  void lightsTheZonesOfAFindingThatIsPointedAt(Page page) {
    page.navigate(workbench.address());
    page.navigate(address("/sites/quayside-bakery/findings"));
    page.locator(".finding", new Page.LocatorOptions().setHasText("Passage motion")).focus();
    assertThat(page.locator(".drawing [data-zone~='2'].lit").count()).isPositive();
  }

  @Test
  void lightsTheFindingsOfAZoneThatIsPointedAtAndGoesToThemOnAClick(Page page) {
    page.setViewportSize(1280, 900);
    page.navigate(workbench.address());
    page.navigate(address("/sites/quayside-bakery/findings"));
    Locator mark = page.locator(".wide-screen [data-zone~='2']").first();
    mark.dispatchEvent("mouseenter");
    Locator finding =
        page.locator(".finding", new Page.LocatorOptions().setHasText("Passage motion"));
    assertThat(finding.getAttribute("class")).contains("lit");
    assertThat(page.locator(".finding.lit").count()).isEqualTo(1);
    mark.dispatchEvent("mouseleave");
    assertThat(page.locator(".finding.lit").count()).isZero();
    mark.dispatchEvent("click");
    assertThat(page.locator(".finding:focus").textContent()).contains("Passage motion");
  }

  /** A click at coordinates of the plan, told by the grid that the page draws. */
  private static void click(Page page, double right, double up) {
    double[] at = new double[2];
    for (int axis = 0; axis < 2; axis++) {
      at[axis] =
          ((Number)
                  page.evaluate(
                      "([right, up]) => { const s = document.querySelector('.trace svg'); const d = s.dataset;"
                          + " const p = new DOMPoint(+d.zeroX + right * d.pixelsRight, +d.zeroY + up * d.pixelsDown)"
                          + ".matrixTransform(s.getScreenCTM()); return "
                          + (axis == 0 ? "p.x" : "p.y")
                          + "; }",
                      List.of(right, up)))
              .doubleValue();
    }
    page.mouse().click(at[0], at[1]);
  }

  @Test
  void tracesARoomOverThePictureOfTheFloor(Page page) {
    page.setViewportSize(1280, 900);
    page.navigate(workbench.address());
    page.navigate(address("/sites/weir-lane-boathouse/plan"));
    page.locator("a", new Page.LocatorOptions().setHasText("Trace Ground")).click();
    page.waitForURL("**" + TRACE);
    Locator line = page.locator("[data-trace=line]");

    click(page, 21.05, 9.04);
    click(page, 24.5, 9.03);
    click(page, 24.53, 4.2);
    assertThat(line.textContent())
        .as("snapped to a corner, then in line with it, then in line with the second")
        .matches(
            "New room: \\{ outline: \\[\\[21, 9], \\[24\\.\\d+, 9], \\[24\\.\\d+, 4\\.\\d+]] }");
    assertThat(page.locator("[data-trace=copy]").isEnabled()).isTrue();

    page.locator("[data-trace=undo]").click();
    assertThat(page.locator("[data-trace=copy]").isEnabled()).isFalse();
    page.locator("[data-trace=clear]").click();
    assertThat(line.textContent()).isEqualTo("no corners yet");
  }

  @Test
  void goesToAPartOfALongOrder(Page page) {
    page.setViewportSize(PHONE, 900);
    page.navigate(workbench.address());
    page.navigate(address(LONG_ORDER));
    page.locator(".chooser summary").click();
    page.locator(".chooser a", new Page.LocatorOptions().setHasText("zone 65")).click();
    String part = page.url().replaceAll(".*#", "");
    assertThat(page.locator("#" + part + " h2").textContent()).isEqualTo("zone 65");
    assertThat(((Number) page.evaluate("scrollY")).doubleValue()).isGreaterThan(10_000);
  }

  @Test
  void sortsAndFiltersTheScheduleByKeyboardAndKeepsTheViewInTheAddress(Page page) {
    page.setViewportSize(1280, 900);
    page.navigate(workbench.address());
    page.navigate(address("/sites/heron-lane-vets/plan"));
    Locator names = page.locator("table.schedule tbody tr:not([hidden]) td:nth-child(2)");
    assertThat(names.count()).isEqualTo(65);
    assertThat(names.first().textContent()).isEqualTo("Staff door");

    Locator head = page.locator("table.schedule thead button").nth(1);
    head.focus();
    page.keyboard().press("Enter");
    assertThat(names.first().textContent()).isEqualTo("Archive door");
    page.keyboard().press("Enter");
    assertThat(names.first().textContent()).isEqualTo("Ward smoke");
    assertThat(page.locator("table.schedule th[aria-sort=descending]").count()).isEqualTo(1);

    page.locator(".filter input").fill("fire wards");
    List<String> wards = List.of("Ward smoke", "Ward smoke", "Night smoke", "Landing smoke");
    assertThat(names.allTextContents()).isEqualTo(wards);
    assertThat(page.locator(".filter [role=status]").textContent()).contains("4 of 65");

    assertThat(page.url()).contains("sort=-2").contains("show=fire+wards");
    page.navigate(page.url());
    assertThat(names.allTextContents()).isEqualTo(wards);
  }

  @Test
  void keepsTheOrderOfNumbersWhenSortingByNumber(Page page) {
    page.navigate(workbench.address());
    page.navigate(address("/sites/heron-lane-vets/plan?sort=1"));
    List<String> numbers = page.locator("table.schedule tbody th").allTextContents();
    assertThat(numbers).startsWith("1", "2", "3").endsWith("64", "65");
    page.navigate(address("/sites/heron-lane-vets/plan?sort=99&show=%3Cscript%3E"));
    assertThat(page.locator("table.schedule tbody tr:not([hidden])").count()).isZero();
  }

  /** The pictures that the README shows; written anew with {@code -Dgolden=renew}. */
  @ParameterizedTest
  @CsvSource({
    "workbench, /sites/quayside-bakery/findings, 1280, 900",
    "plan, /sites/heron-lane-vets/plan, 1280, 900",
    "order, /sites/heron-lane-vets/order#part-2, 360, 900",
    "rehearsal, /sites/quayside-bakery/rehearsal, 1280, 900"
  })
  void hasItsPicturesInTheReadme(String name, String path, int width, int height, Page page)
      throws IOException {
    page.setViewportSize(width, height);
    page.navigate(workbench.address());
    page.navigate(address(path));
    byte[] picture = page.screenshot();
    Path file = Repository.root().resolve("docs/images/" + name + ".png");
    if ("renew".equals(System.getProperty("golden"))) {
      Files.createDirectories(file.getParent());
      Files.write(file, picture);
    }
    assertThat(file).isNotEmptyFile();
    assertThat(Files.readString(Repository.root().resolve("README.md")))
        .contains("docs/images/" + name + ".png");
  }

  private static List<String> paths() {
    List<String> paths = new ArrayList<>(List.of("/"));
    for (String site : List.of("quayside-bakery", "weir-lane-boathouse", "heron-lane-vets")) {
      for (Stage stage : Stage.values()) {
        paths.add("/sites/" + site + "/" + stage.address());
      }
    }
    paths.add(TRACE);
    return paths;
  }

  private static String address(String path) {
    return workbench.address().replaceAll("/\\?.*", "") + path;
  }
}
