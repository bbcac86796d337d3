package keenward.core.plan;

import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Something that a plan may state, may leave out, or may call not known yet. Sums treat the last
 * two alike ("at least"); the survey list shows what is still to find out.
 */
public sealed interface Fact<T> {

  /** Stated in the plan. */
  record Given<T>(T value) implements Fact<T> {}

  /** The plan says {@code unknown}: somebody has to find out. */
  record Unknown<T>() implements Fact<T> {}

  /** The plan does not mention it. */
  record Missing<T>() implements Fact<T> {}

  /** A stated fact. */
  static <T> Fact<T> of(T value) {
    return new Given<>(value);
  }

  /** A fact that is not known yet. */
  static <T> Fact<T> unknown() {
    return new Unknown<>();
  }

  /** A fact that the plan does not mention. */
  static <T> Fact<T> missing() {
    return new Missing<>();
  }

  /** The value, when stated. */
  default Optional<T> find() {
    return this instanceof Given<T>(T value) ? Optional.of(value) : Optional.empty();
  }

  /** The value, or null when not stated. */
  default @Nullable T orNull() {
    return this instanceof Given<T>(T value) ? value : null;
  }

  /** The value, or another when not stated. */
  default T orElse(T other) {
    return this instanceof Given<T>(T value) ? value : other;
  }

  /** Whether the plan states a value. */
  default boolean isGiven() {
    return this instanceof Given;
  }

  /**
   * This fact when the plan mentions it (even as unknown), otherwise the fallback: own value over
   * type's value.
   */
  default Fact<T> or(Fact<T> fallback) {
    return this instanceof Missing ? fallback : this;
  }

  /** The same fact about something derived from the value. */
  default <R> Fact<R> map(Function<T, R> function) {
    return switch (this) {
      case Given<T>(T value) -> of(function.apply(value));
      case Unknown<T> ignored -> unknown();
      case Missing<T> ignored -> missing();
    };
  }

  /** A fact about the value, which may itself be unknown or missing. */
  default <R> Fact<R> flatMap(Function<T, Fact<R>> function) {
    return switch (this) {
      case Given<T>(T value) -> function.apply(value);
      case Unknown<T> ignored -> unknown();
      case Missing<T> ignored -> missing();
    };
  }
}
