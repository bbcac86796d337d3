package keenward.files.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import keenward.files.QuotedText;

/** Bytes to characters: UTF-8 only, nothing in it that a person could not see. */
final class YamlText {

  /** Reported one by one; beyond, they are of one kind and one remedy. */
  private static final int MOST_CHARACTERS_REPORTED = 20;

  private static final int BYTE_ORDER_MARK = 0xFEFF;
  private static final Span FILE_START = new Span(0, 0, 1, 1);

  private YamlText() {}

  /**
   * The text to parse; empty when it cannot be parsed at all. Every fault is added to the problems.
   */
  static Optional<String> decode(byte[] bytes, ProblemList problems) {
    if (bytes.length > YamlLimits.BYTES) {
      problems.add(
          FILE_START,
          "the file has " + bytes.length + " bytes",
          "at most " + YamlLimits.BYTES + " (4 MiB)",
          "check that it is the right file");
      return Optional.empty();
    }
    return utf8(bytes, problems).flatMap(text -> visible(text, problems));
  }

  private static Optional<String> utf8(byte[] bytes, ProblemList problems) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      Span place = new TextPlaces(text).span(text.length(), text.length());
      String shown = String.format("0x%02X", bytes[in.position()] & 0xFF);
      problems.add(
          place,
          "byte " + shown + " at offset " + in.position() + " is not UTF-8",
          "a text file in UTF-8",
          "save the file again with the encoding UTF-8");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private static Optional<String> visible(String decoded, ProblemList problems) {
    String text = decoded;
    if (!text.isEmpty() && text.codePointAt(0) == BYTE_ORDER_MARK) {
      problems.add(
          FILE_START,
          "the file starts with a byte order mark",
          "plain UTF-8",
          "save the file again as UTF-8 without byte order mark");
      text = text.substring(1);
    }
    TextPlaces places = new TextPlaces(text);
    StringBuilder parsed = null;
    boolean readable = true;
    int reported = 0;
    boolean indentation = true;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int codePoint = text.codePointAt(i);
      if (codePoint == '\t') {
        if (reported++ < MOST_CHARACTERS_REPORTED) {
          problems.add(
              places.span(i, i + 1), "a tab character", "spaces", "replace the tab by spaces");
        }
        readable &= !indentation;
        parsed = parsed == null ? new StringBuilder(text) : parsed;
        parsed.setCharAt(i, ' ');
      } else if (isForbidden(codePoint)) {
        if (reported++ < MOST_CHARACTERS_REPORTED) {
          problems.add(
              places.span(i, i + 1),
              "the invisible character " + QuotedText.name(codePoint),
              "characters that can be seen",
              "remove it");
        }
        readable = false;
      }
      indentation = codePoint == '\n' || codePoint == '\r' || (indentation && codePoint == ' ');
    }
    if (!readable) {
      return Optional.empty();
    }
    return Optional.of(parsed == null ? text : parsed.toString());
  }

  /**
   * Whether a character may stand neither in a file nor, by way of an escape, in a value: controls
   * except line ends, line separators of other systems, characters of no width, marks that change
   * the reading direction, codes that are no characters.
   */
  static boolean isForbidden(int codePoint) {
    if (codePoint == '\n' || codePoint == '\r') {
      return false;
    }
    return Character.isISOControl(codePoint)
        || codePoint == 0x2028
        || codePoint == 0x2029
        || codePoint == BYTE_ORDER_MARK
        || codePoint == 0x00AD
        || codePoint == 0x200B
        || codePoint == 0x200E
        || codePoint == 0x200F
        || (codePoint >= 0x2060 && codePoint <= 0x2064)
        || (codePoint >= 0x202A && codePoint <= 0x202E)
        || (codePoint >= 0x2066 && codePoint <= 0x2069)
        || (codePoint >= 0xD800 && codePoint <= 0xDFFF)
        || (codePoint & 0xFFFE) == 0xFFFE;
  }
}
