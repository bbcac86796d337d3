package keenward.core.rules;

/**
 * Where a rule comes from.
 *
 * @param standard the standard, or {@code common practice}
 * @param edition edition or year; empty where the text holds for all, or for common practice
 * @param clause clause, or what the text is about where the clause is not known; empty for common
 *     practice
 * @param how how it is known
 * @param page the page it was read on; empty otherwise
 */
public record Source(String standard, String edition, String clause, How how, String page) {

  /** How a source is known. */
  public enum How {
    /** Read on a page that can be cited. */
    READ("read on a page"),
    /** Stated from memory; check before relying on it. */
    MEMORY("from memory"),
    /** What technicians do; no text stands behind it. */
    PRACTICE("no source");

    private final String words;

    How(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** A text that was read on a page. */
  public static Source read(String standard, String edition, String clause, String page) {
    return new Source(standard, edition, clause, How.READ, page);
  }

  /** A text that is stated from memory. */
  public static Source memory(String standard, String edition, String clause) {
    return new Source(standard, edition, clause, How.MEMORY, "");
  }

  /** Common practice of technicians. */
  public static Source practice() {
    return new Source("common practice", "", "", How.PRACTICE, "");
  }

  /** The source on one line. */
  public String words() {
    StringBuilder words = new StringBuilder(standard);
    if (!edition.isEmpty()) {
      words.append(' ').append(edition);
    }
    if (!clause.isEmpty()) {
      words.append(", ").append(clause);
    }
    if (how == How.PRACTICE) {
      return words.append(", ").append(how.words()).toString();
    }
    words.append(" (").append(how.words());
    if (!page.isEmpty()) {
      words.append(": ").append(page);
    }
    return words.append(')').toString();
  }
}
