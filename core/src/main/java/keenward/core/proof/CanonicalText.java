package keenward.core.proof;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.function.Function;
import keenward.core.plan.Fact;

/**
 * Writes facts as lines of {@code key=value} whose bytes depend on the facts alone: values in base
 * units, texts in quotes with their own quotes, backslashes and line breaks escaped, {@code ?} for
 * unknown, {@code -} for missing.
 */
final class CanonicalText {
  private final StringBuilder text = new StringBuilder();

  CanonicalText line(String key, String value) {
    text.append(key).append('=').append(value).append('\n');
    return this;
  }

  CanonicalText words(String key, String value) {
    return line(key, quoted(value));
  }

  CanonicalText number(String key, double value) {
    return line(key, number(value));
  }

  <T> CanonicalText fact(String key, Fact<T> fact, Function<T, String> value) {
    return line(
        key,
        switch (fact) {
          case Fact.Given<T>(T given) -> value.apply(given);
          case Fact.Unknown<T> unknown -> "?";
          case Fact.Missing<T> missing -> "-";
        });
  }

  <T> CanonicalText list(String key, Collection<T> values, Function<T, String> value) {
    return line(key, "[" + String.join(",", values.stream().map(value).toList()) + "]");
  }

  static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  static String quoted(String value) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int index = 0; index < value.length(); index++) {
      char character = value.charAt(index);
      switch (character) {
        case '"', '\\' -> quoted.append('\\').append(character);
        case '\n' -> quoted.append("\\n");
        case '\r' -> quoted.append("\\r");
        default -> quoted.append(character);
      }
    }
    return quoted.append('"').toString();
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
