package keenward.files.yaml;

/**
 * Where a node stands in its text.
 *
 * @param start first character, as an index into {@link YamlDocument#text()} (UTF-16 units)
 * @param end one past the last character, in the same units; comments and blank lines after it are
 *     outside
 * @param line of {@code start}, from 1
 * @param column of {@code start}, from 1, counted in code points
 */
public record Span(int start, int end, int line, int column) {

  /** The place of a node that stands in no file. */
  static final Span NOWHERE = new Span(0, 0, 1, 1);
}
