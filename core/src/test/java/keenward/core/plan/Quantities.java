package keenward.core.plan;

import java.time.LocalDate;
import keenward.core.quantities.Parsed;

/** Reads quantities that a test writes down; one that does not fit is a mistake of the test. */
final class Quantities {

  private Quantities() {}

  static <T> T of(Parsed<T> parsed) {
    return parsed
        .find()
        .orElseThrow(() -> new IllegalArgumentException("expected " + parsed.expected()));
  }

  static LocalDate date(String text) {
    return LocalDate.parse(text);
  }
}
