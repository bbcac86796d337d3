package keenward.files.yaml;

import java.util.Arrays;

/** Lines and columns of a text; CR, LF and CR LF each end a line. */
final class TextPlaces {

  private final int[] lineStarts;
  private final boolean supplementary;

  /** Only for a text with characters of two units, which would else be counted over and over. */
  private final int[] offsetOfCodePoint;

  private final int[] codePointOfOffset;

  TextPlaces(String text) {
    this.lineStarts = lineStarts(text);
    int codePoints = text.codePointCount(0, text.length());
    this.supplementary = codePoints != text.length();
    this.offsetOfCodePoint = supplementary ? offsets(text, codePoints) : new int[0];
    this.codePointOfOffset = supplementary ? indices(text) : new int[0];
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[16];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean crOfCrLf = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (c == '\n' || (c == '\r' && !crOfCrLf)) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, count * 2);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  private static int[] offsets(String text, int codePoints) {
    int[] offsets = new int[codePoints + 1];
    int offset = 0;
    for (int i = 0; i < codePoints; i++) {
      offsets[i] = offset;
      offset += Character.charCount(text.codePointAt(offset));
    }
    offsets[codePoints] = offset;
    return offsets;
  }

  private static int[] indices(String text) {
    int[] indices = new int[text.length() + 1];
    int index = 0;
    for (int offset = 0; offset < text.length(); offset++) {
      indices[offset] = index;
      index += Character.isHighSurrogate(text.charAt(offset)) ? 0 : 1;
    }
    indices[text.length()] = index;
    return indices;
  }

  /** The offset in UTF-16 units of the code point with that index. */
  int offset(int codePointIndex) {
    return supplementary ? offsetOfCodePoint[codePointIndex] : codePointIndex;
  }

  /** The span between two offsets in UTF-16 units. */
  Span span(int start, int end) {
    int found = Arrays.binarySearch(lineStarts, start);
    int line = found >= 0 ? found : -found - 2;
    int lineStart = lineStarts[line];
    int column =
        supplementary
            ? codePointOfOffset[start] - codePointOfOffset[lineStart] + 1
            : start - lineStart + 1;
    return new Span(start, end, line + 1, column);
  }
}
