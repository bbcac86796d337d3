package keenward.core.rehearsal.scenario;

/**
 * A word of a script.
 *
 * @param text the word, without its quotes
 * @param quoted whether it was quoted, and so is a name
 * @param column where it starts, from 1
 */
record Token(String text, boolean quoted, int column) {

  boolean is(String word) {
    return !quoted && text.equals(word);
  }

  /** As a person would point at it. */
  String shown() {
    return quoted ? "\"" + text + "\"" : text;
  }
}
