package keenward.core.reporting;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.apache.commons.codec.digest.Crc16;
import org.junit.jupiter.api.Test;

class Crc16ArcTest {
  /** The check value of CRC-16/ARC in the published catalogues of CRC parameters: 0xBB3D. */
  @Test
  void nineDigitsGiveTheCheckValue() {
    byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
    assertThat(Crc16Arc.of(digits, 0, 9)).isEqualTo(0xBB3D);
  }

  /** Apache Commons Codec computes the same CRC. */
  @Test
  void agreesWithAGeneralPurposeLibrary() {
    long seed = 16L;
    Random random = new Random(seed);
    for (int round = 0; round < 500; round++) {
      byte[] bytes = new byte[random.nextInt(300)];
      random.nextBytes(bytes);
      int from = bytes.length == 0 ? 0 : random.nextInt(bytes.length);
      Crc16 library = Crc16.arc();
      library.update(bytes, from, bytes.length - from);
      assertThat(Crc16Arc.of(bytes, from, bytes.length))
          .as("seed %d", seed)
          .isEqualTo((int) library.getValue());
    }
  }
}
