package keenward.core.dialogue.replay;

import java.util.List;
import keenward.core.dialogue.machine.Display;

/** Compares what a display shows with what an order says it shows. */
final class Shown {
  private Shown() {}

  /**
   * Whether {@code actual} is what {@code expected} announces. Without unknown values both must be
   * the same to the letter; with some, runs of question marks stand for any text, and a single line
   * of one question mark for any display.
   */
  static boolean matches(Display expected, Display actual) {
    if (expected.lines().equals(actual.lines())) {
      return true;
    }
    if (expected.unknown().isEmpty()) {
      return false;
    }
    if (expected.lines().equals(List.of("?"))) {
      return true;
    }
    if (expected.lines().size() != actual.lines().size()) {
      return false;
    }
    for (int line = 0; line < expected.lines().size(); line++) {
      if (!matches(expected.lines().get(line), actual.lines().get(line))) {
        return false;
      }
    }
    return true;
  }

  /** Text with runs of question marks that stand for any text. */
  static boolean matches(String pattern, String text) {
    return matches(pattern, 0, text, 0);
  }

  private static boolean matches(String pattern, int from, String text, int start) {
    if (from == pattern.length()) {
      return start == text.length();
    }
    if (pattern.charAt(from) != '?') {
      return start < text.length()
          && pattern.charAt(from) == text.charAt(start)
          && matches(pattern, from + 1, text, start + 1);
    }
    int after = from;
    while (after < pattern.length() && pattern.charAt(after) == '?') {
      after++;
    }
    for (int rest = start; rest <= text.length(); rest++) {
      if (matches(pattern, after, text, rest)) {
        return true;
      }
    }
    return false;
  }
}
