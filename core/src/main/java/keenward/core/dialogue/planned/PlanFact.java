package keenward.core.dialogue.planned;

import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.PlanRecords;

/**
 * A fact that a site plan may state and a panel may have a field for.
 *
 * @param path published name, used after {@code from:} in a panel description
 * @param records what it is stated for, one by one; empty for the system as a whole
 * @param kind what it looks like
 * @param words all its words, where it has words
 * @param meaning one line for the reference
 */
public record PlanFact(
    String path, Optional<PlanRecords> records, Kind kind, List<String> words, String meaning) {
  public PlanFact {
    words = List.copyOf(words);
  }

  /** What a fact looks like. */
  public enum Kind {
    /** One word. */
    WORD,
    /** Any of several words. */
    WORDS,
    /** {@code yes} or {@code no}. */
    YES_NO,
    /** Any of several numbers. */
    NUMBERS,
    /** A whole number. */
    NUMBER,
    /** A length of time. */
    TIME,
    /** Text, or digits with their leading zeros. */
    TEXT,
    /** A code, by reference. */
    CODE
  }
}
