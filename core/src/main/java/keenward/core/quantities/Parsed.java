package keenward.core.quantities;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The result of reading a text: either a value, or what had been expected instead.
 *
 * @param value the value; null when the text did not fit
 * @param expected what would have been right, in words, with an example; null when the text fitted
 */
public record Parsed<T>(@Nullable T value, @Nullable String expected) {

  public Parsed {
    if ((value == null) == (expected == null)) {
      throw new IllegalArgumentException("a result is either a value or an expectation");
    }
  }

  /** A text that fitted. */
  public static <T> Parsed<T> of(T value) {
    return new Parsed<>(value, null);
  }

  /** A text that did not fit, and what would have. */
  public static <T> Parsed<T> expected(String expectation) {
    return new Parsed<>(null, expectation);
  }

  /** The value, when the text fitted. */
  public Optional<T> find() {
    return Optional.ofNullable(value);
  }
}
