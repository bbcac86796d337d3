package keenward.endtoend.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import keenward.endtoend.Repository;
import org.junit.jupiter.api.Test;

/** No page points at nothing, and the two indexes leave nothing out. */
class LinksTest {

  private static final Path DOCS = Repository.root().resolve("docs");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("^#{1,6} +(.+)$");
  private static final Pattern NOT_IN_AN_ANCHOR = Pattern.compile("[^\\p{L}\\p{N} _-]");
  private static final String FENCE = "```";

  @Test
  void eachLinkLeadsToAFileAndAHeading() throws IOException {
    List<String> broken = new ArrayList<>();
    int followed = 0;
    for (Path page : pages()) {
      for (String target : targets(page)) {
        followed++;
        if (!leadsSomewhere(page, target)) {
          broken.add(Repository.root().relativize(page) + ": " + target);
        }
      }
    }

    assertThat(broken).isEmpty();
    assertThat(followed).isGreaterThan(40);
  }

  @Test
  void aLinkToAMissingFileOrHeadingIsNoticed() throws IOException {
    Path index = DOCS.resolve("README.md");

    assertThat(leadsSomewhere(index, "no-such-page.md")).isFalse();
    assertThat(leadsSomewhere(index, "../README.md#no-such-heading")).isFalse();
    assertThat(leadsSomewhere(index, "../README.md#limits")).isTrue();
  }

  @Test
  void theIndexNamesEveryPage() throws IOException {
    assertThat(linkedFrom(DOCS.resolve("README.md")))
        .containsAll(pagesBelow("guide", "methods", "reference"));
  }

  @Test
  void theIndexOfDecisionsNamesEveryRecordByItsTitle() throws IOException {
    Path index = DOCS.resolve("decisions/README.md");
    String text = Files.readString(index);
    for (Path record : pagesBelow("decisions")) {
      if (!record.equals(index)) {
        String title = Files.readAllLines(record).getFirst().replaceFirst("^# (\\d{4}) ", "$1) | ");
        String number = title.substring(0, 4);
        assertThat(text)
            .contains(
                "| ["
                    + number
                    + "]("
                    + record.getFileName()
                    + ") | "
                    + title.substring(title.indexOf("| ") + 2)
                    + " |");
      }
    }
  }

  private static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>(markdownIn(DOCS));
    pages.addAll(markdownIn(Repository.root().resolve("benchmarks")));
    try (Stream<Path> files = Files.list(Repository.root())) {
      files.filter(file -> file.toString().endsWith(".md")).forEach(pages::add);
    }
    return pages;
  }

  private static List<Path> pagesBelow(String... folders) throws IOException {
    List<Path> pages = new ArrayList<>();
    for (String folder : folders) {
      pages.addAll(markdownIn(DOCS.resolve(folder)));
    }
    assertThat(pages).isNotEmpty();
    return pages;
  }

  private static List<Path> markdownIn(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".md")).sorted().toList();
    }
  }

  private static Set<Path> linkedFrom(Path page) throws IOException {
    Set<Path> linked = new HashSet<>();
    for (String target : targets(page)) {
      if (!target.contains("://") && !target.startsWith("#")) {
        linked.add(resolve(page, target.replaceFirst("#.*", "")));
      }
    }
    return linked;
  }

  private static List<String> targets(Path page) throws IOException {
    List<String> targets = new ArrayList<>();
    for (String line : prose(page)) {
      Matcher matcher = LINK.matcher(line);
      while (matcher.find()) {
        targets.add(Objects.requireNonNull(matcher.group(1)));
      }
    }
    return targets;
  }

  private static boolean leadsSomewhere(Path page, String target) throws IOException {
    if (target.startsWith("https://")) {
      return true;
    }
    int hash = target.indexOf('#');
    String file = hash < 0 ? target : target.substring(0, hash);
    Path there = file.isEmpty() ? page : resolve(page, file);
    return Files.exists(there) && (hash < 0 || anchors(there).contains(target.substring(hash + 1)));
  }

  private static Path resolve(Path page, String file) {
    return Objects.requireNonNull(page.getParent()).resolve(file).normalize();
  }

  /** Anchors as GitHub makes them (common practice): lower case, hyphens, letters and digits. */
  private static Set<String> anchors(Path page) throws IOException {
    Set<String> anchors = new HashSet<>();
    for (String line : prose(page)) {
      Matcher matcher = HEADING.matcher(line);
      if (matcher.matches()) {
        String title = Objects.requireNonNull(matcher.group(1)).toLowerCase(Locale.ROOT);
        anchors.add(NOT_IN_AN_ANCHOR.matcher(title).replaceAll("").replace(' ', '-'));
      }
    }
    return anchors;
  }

  private static List<String> prose(Path page) throws IOException {
    List<String> prose = new ArrayList<>();
    boolean fenced = false;
    for (String line : Files.readAllLines(page)) {
      if (line.startsWith(FENCE)) {
        fenced = !fenced;
      } else if (!fenced) {
        prose.add(line);
      }
    }
    return prose;
  }
}
