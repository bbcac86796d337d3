package keenward.files.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Finds out how a text file is encoded: by its byte order mark, by the zero bytes of UTF-16, by
 * being sound UTF-8; else it is taken for Windows-1252, the usual one of old spreadsheets.
 */
final class TextDecoder {

  private static final Charset WINDOWS = Charset.forName("windows-1252");

  private TextDecoder() {}

  /**
   * A text and how it was encoded.
   *
   * @param text the text, without byte order mark
   * @param encoding its encoding in words
   */
  record Decoded(String text, String encoding) {}

  /** The text; empty when the bytes are no text. */
  static Optional<Decoded> decode(byte[] bytes) {
    return decodeAny(bytes).filter(decoded -> decoded.text().indexOf('\0') < 0);
  }

  private static Optional<Decoded> decodeAny(byte[] bytes) {
    if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
      return decode(bytes, 3, StandardCharsets.UTF_8, "UTF-8 with byte order mark");
    }
    if (startsWith(bytes, 0xFF, 0xFE)) {
      return decode(bytes, 2, StandardCharsets.UTF_16LE, "UTF-16, little end first");
    }
    if (startsWith(bytes, 0xFE, 0xFF)) {
      return decode(bytes, 2, StandardCharsets.UTF_16BE, "UTF-16, big end first");
    }
    // Without a mark, every other byte of Latin text in UTF-16 is zero.
    if (zeros(bytes, 1) > bytes.length / 6 && zeros(bytes, 0) == 0) {
      return decode(bytes, 0, StandardCharsets.UTF_16LE, "UTF-16, little end first, guessed");
    }
    if (zeros(bytes, 0) > bytes.length / 6 && zeros(bytes, 1) == 0) {
      return decode(bytes, 0, StandardCharsets.UTF_16BE, "UTF-16, big end first, guessed");
    }
    return decode(bytes, 0, StandardCharsets.UTF_8, "UTF-8")
        .or(() -> decode(bytes, 0, WINDOWS, "Windows-1252, guessed since it is not UTF-8"));
  }

  private static Optional<Decoded> decode(
      byte[] bytes, int skip, Charset charset, String encoding) {
    try {
      String text =
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes, skip, bytes.length - skip))
              .toString();
      return Optional.of(new Decoded(text, encoding));
    } catch (CharacterCodingException unfit) {
      return Optional.empty();
    }
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static int zeros(byte[] bytes, int from) {
    int zeros = 0;
    for (int i = from; i < bytes.length; i += 2) {
      if (bytes[i] == 0) {
        zeros++;
      }
    }
    return zeros;
  }
}
