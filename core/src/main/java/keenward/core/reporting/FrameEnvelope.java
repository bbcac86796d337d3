package keenward.core.reporting;

/**
 * The outside of a DC-09 frame: line feed, four hexadecimal digits of CRC, 0 and three hexadecimal
 * digits of length, the body, carriage return. CRC and length cover the body alone.
 */
public final class FrameEnvelope {
  private static final byte LINE_FEED = 0x0A;
  private static final byte CARRIAGE_RETURN = 0x0D;
  private static final int CRC_FROM = 1;
  private static final int LENGTH_FROM = 5;

  /** Place of the body in the bytes. */
  static final int BODY_FROM = 9;

  private static final int LONGEST_BODY = 0xFFF;

  private FrameEnvelope() {}

  /**
   * Bytes to send for a body of one character a byte.
   *
   * @throws IllegalArgumentException when the body is longer than 4095 bytes
   */
  public static byte[] wrap(String body) {
    int length = body.length();
    if (length > LONGEST_BODY) {
      throw new IllegalArgumentException(
          "body of " + length + " bytes: expected at most " + LONGEST_BODY);
    }
    byte[] bytes = new byte[BODY_FROM + length + 1];
    put(bytes, BODY_FROM, body);
    int crc = Crc16Arc.of(bytes, BODY_FROM, BODY_FROM + length);
    bytes[0] = LINE_FEED;
    put(bytes, CRC_FROM, Digits.hexadecimal(crc, 4));
    put(bytes, LENGTH_FROM, "0" + Digits.hexadecimal(length, 3));
    bytes[bytes.length - 1] = CARRIAGE_RETURN;
    return bytes;
  }

  /** The body of received bytes, when CRC and length are right; positions count bytes. */
  public static Decoded<String> unwrap(byte[] bytes) {
    int end = bytes.length - 1;
    if (end < BODY_FROM) {
      return Decoded.refused(
          bytes.length, "frame of " + bytes.length + " bytes", "at least 10 bytes");
    }
    if (bytes[0] != LINE_FEED) {
      return Decoded.refused(0, "a frame that begins " + shown(bytes[0]), "line feed (0x0A)");
    }
    if (bytes[end] != CARRIAGE_RETURN) {
      return Decoded.refused(
          end, "a frame that ends " + shown(bytes[end]), "carriage return (0x0D)");
    }
    for (int index = CRC_FROM; index < BODY_FROM; index++) {
      char digit = (char) (bytes[index] & 0xFF);
      if (index == LENGTH_FROM ? digit != '0' : !Digits.isHexadecimal(digit)) {
        return Decoded.refused(
            index,
            shown(bytes[index]) + " before the body",
            index == LENGTH_FROM ? "0 before the length" : "a hexadecimal digit");
      }
    }
    int length = end - BODY_FROM;
    int sentLength = number(bytes, LENGTH_FROM, BODY_FROM);
    if (sentLength != length) {
      return Decoded.refused(
          LENGTH_FROM,
          "length " + Digits.hexadecimal(sentLength, 4) + " (hexadecimal)",
          Digits.hexadecimal(length, 4) + " for a body of " + length + " bytes");
    }
    int crc = Crc16Arc.of(bytes, BODY_FROM, end);
    int sentCrc = number(bytes, CRC_FROM, LENGTH_FROM);
    if (sentCrc != crc) {
      return Decoded.refused(
          CRC_FROM, "CRC " + Digits.hexadecimal(sentCrc, 4), Digits.hexadecimal(crc, 4));
    }
    StringBuilder body = new StringBuilder(length);
    for (int index = BODY_FROM; index < end; index++) {
      body.append((char) (bytes[index] & 0xFF));
    }
    return Decoded.of(body.toString());
  }

  private static void put(byte[] bytes, int from, String text) {
    for (int index = 0; index < text.length(); index++) {
      char character = text.charAt(index);
      if (character > 0xFF) {
        throw new IllegalArgumentException(
            "character " + (index + 1) + " of the body does not fit one byte");
      }
      bytes[from + index] = (byte) character;
    }
  }

  private static int number(byte[] bytes, int from, int to) {
    int number = 0;
    for (int index = from; index < to; index++) {
      number = number << 4 | Character.digit(bytes[index], 16);
    }
    return number;
  }

  private static String shown(byte value) {
    return "byte 0x" + Digits.hexadecimal(value & 0xFF, 2);
  }
}
