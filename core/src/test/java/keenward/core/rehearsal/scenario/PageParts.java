package keenward.core.rehearsal.scenario;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Fills the parts of a page that the program knows best, between their begin and end marks. */
final class PageParts {

  private PageParts() {}

  static String read(Path page) {
    try {
      return Files.readString(page, UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static String filled(String page, String part, String content) {
    String begin = "<!-- begin: " + part + " -->\n";
    int from = page.indexOf(begin);
    int to = page.indexOf("<!-- end: " + part + " -->");
    assertThat(from).as(part).isPositive();
    assertThat(to).as(part).isGreaterThan(from);
    return page.substring(0, from + begin.length()) + content + page.substring(to);
  }
}
