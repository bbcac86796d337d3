package keenward.papers;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Where templates and style sheets come from, by file name. */
public interface TemplateSource {

  /** File names that somebody may replace. */
  List<String> SHIPPED_NAMES =
      List.of(
          "account-form.html",
          "battery-sheet.html",
          "cautions.html",
          "cover.html",
          "door-label.html",
          "drawing.html",
          "entry-sheet.html",
          "file.html",
          "findings.html",
          "head.html",
          "index.html",
          "label-zones.html",
          "missing.html",
          "order-lines.html",
          "owners-page.html",
          "pack.html",
          "print.css",
          "rehearsal.html",
          "screen.css",
          "test-sheet.html",
          "work-order.html",
          "walks.html",
          "zone-schedule.html");

  /** The text of a template or style sheet; empty when this source has none of that name. */
  Optional<String> find(String name);

  /** The templates that ship. */
  static TemplateSource shipped() {
    return name -> SHIPPED_NAMES.contains(name) ? Optional.of(resource(name)) : Optional.empty();
  }

  /** Somebody's own templates, and those that ship where there is none of their own. */
  static TemplateSource over(Function<String, Optional<String>> own) {
    return name -> own.apply(name).or(() -> shipped().find(name));
  }

  private static String resource(String name) {
    try (InputStream stream = TemplateSource.class.getResourceAsStream("templates/" + name)) {
      if (stream == null) {
        throw new IllegalStateException("template is not in the program: " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException("template cannot be read: " + name, broken);
    }
  }
}
