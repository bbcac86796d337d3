package keenward.core.rules.catalogue;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class CataloguePageTest {

  private static final Path PAGE = Path.of("..", "docs", "reference", "rules.md");

  @Test
  void isThePageInTheReference() throws IOException {
    String page = CataloguePage.markdown();
    if ("renew".equals(System.getProperty("golden"))) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, page, UTF_8);
    }
    assertThat(Files.exists(PAGE) ? Files.readString(PAGE, UTF_8) : "")
        .as("%s; renew with -Dgolden=renew and read the difference", PAGE)
        .isEqualTo(page);
  }

  /**
   * Anchors as CommonMark renderers of code hosts make them: lower case, marks dropped, blanks to
   * hyphens.
   */
  @Test
  void linksEveryRowToItsSection() {
    String page = CataloguePage.markdown();
    Matcher links = Pattern.compile("\\(#([^)]+)\\)").matcher(page);
    int count = 0;
    while (links.find()) {
      String anchor = links.group(1);
      assertThat(
              page.lines()
                  .filter(line -> line.startsWith("### "))
                  .map(line ->
                      line.substring(4)
                          .toLowerCase(Locale.ROOT)
                          .replace(":", "")
                          .replace(' ', '-')))
          .contains(anchor);
      count++;
    }
    assertThat(count).isEqualTo(RuleRegistry.all().size());
  }

  /** Every rule named on the page of mistakes is there, so its example of the fault is run. */
  @Test
  void atLeastFifteenOfTheCostlyMistakesAreCaught() throws IOException {
    List<String> rows =
        Files.readAllLines(Path.of("../docs/methods/mistakes.md")).stream()
            .filter(line -> line.matches("\\| \\d+ .*"))
            .toList();
    assertThat(rows).hasSize(25);
    List<String> caught = rows.stream().filter(row -> !row.contains("not caught")).toList();
    assertThat(caught).hasSizeGreaterThanOrEqualTo(15);
    for (String row : rows) {
      Matcher code = Pattern.compile("[A-Z]{3}-\\d\\d").matcher(row);
      while (code.find()) {
        assertThat(RuleRegistry.find(code.group())).as(code.group()).isPresent();
      }
    }
  }
}
