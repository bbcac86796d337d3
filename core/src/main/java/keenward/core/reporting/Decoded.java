package keenward.core.reporting;

/**
 * What came of decoding text or bytes: the value, or the first place that does not fit and why.
 *
 * @param <T> what was to be decoded
 */
public sealed interface Decoded<T> {

  /** The text was well formed. */
  record Value<T>(T value) implements Decoded<T> {}

  /**
   * The text was refused.
   *
   * @param position place of the first character that does not fit, counted from 0
   * @param what what stands there
   * @param expected what should stand there
   */
  record Refused<T>(int position, String what, String expected) implements Decoded<T> {
    /** One line for people; places are counted from 1. */
    public String message() {
      return "character " + (position + 1) + ": " + what + "; expected " + expected;
    }

    /** The same refusal where another type was hoped for. */
    public <U> Decoded<U> as() {
      return new Refused<>(position, what, expected);
    }

    /** The same refusal when the decoded text began {@code characters} into a larger one. */
    public Refused<T> shifted(int characters) {
      return new Refused<>(position + characters, what, expected);
    }
  }

  /** A refusal. */
  static <T> Decoded<T> refused(int position, String what, String expected) {
    return new Refused<>(position, what, expected);
  }

  /** A decoded value. */
  static <T> Decoded<T> of(T value) {
    return new Value<>(value);
  }
}
