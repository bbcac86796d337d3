package keenward.files;

/**
 * One fault of a file that a person wrote, at its place.
 *
 * @param file name of the file as the person gave it
 * @param line from 1
 * @param column from 1, counted in Unicode code points
 * @param what what is wrong, with the offending text in it
 * @param expected what would have been right, worded to follow "expected"; empty when {@code what}
 *     says it all
 * @param remedy what to do about it; empty when there is nothing to add
 */
public record Problem(
    String file, int line, int column, String what, String expected, String remedy) {

  public Problem {
    if (line < 1 || column < 1) {
      throw new IllegalArgumentException("line and column start at 1: " + line + ":" + column);
    }
  }

  /** The line that people read: {@code FILE:LINE:COLUMN: what; expected ...; remedy}. */
  public String message() {
    StringBuilder text = new StringBuilder();
    text.append(QuotedText.visible(file)).append(':').append(line).append(':').append(column);
    text.append(": ").append(what);
    if (!expected.isEmpty()) {
      text.append("; expected ").append(expected);
    }
    if (!remedy.isEmpty()) {
      text.append("; ").append(remedy);
    }
    return text.toString();
  }

  @Override
  public String toString() {
    return message();
  }
}
