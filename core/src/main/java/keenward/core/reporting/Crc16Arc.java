package keenward.core.reporting;

/**
 * CRC-16/ARC as DC-09 uses it: polynomial 0x8005 reflected (0xA001), start 0, no final
 * exclusive-or; the nine digits "123456789" give 0xBB3D.
 */
public final class Crc16Arc {
  private static final int REFLECTED_POLYNOMIAL = 0xA001;

  private Crc16Arc() {}

  /** Remainder, 0 to 0xFFFF, of the bytes in [from, to). */
  public static int of(byte[] bytes, int from, int to) {
    int remainder = 0;
    for (int index = from; index < to; index++) {
      remainder ^= bytes[index] & 0xFF;
      for (int bit = 0; bit < 8; bit++) {
        remainder = (remainder & 1) == 0 ? remainder >>> 1 : remainder >>> 1 ^ REFLECTED_POLYNOMIAL;
      }
    }
    return remainder;
  }
}
