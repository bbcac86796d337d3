package keenward.files.plan;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.Random;
import keenward.core.plan.PlanPath;
import keenward.files.Problem;
import keenward.files.shape.YamlMutation;
import keenward.files.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** Whatever the bytes, a reading ends with a plan or with problems, never with an exception. */
class HostilePlansTest {

  private static final int READINGS = 600;

  private static PlanReading read(long seed, byte[] bytes) {
    try {
      PlanReading reading = SitePlanReader.read("any.site.yaml", bytes);
      assertThat(reading.plan().isPresent()).isEqualTo(reading.problems().isEmpty());
      for (Problem problem : reading.problems()) {
        assertThat(problem.message()).startsWith("any.site.yaml:").doesNotContain("\n");
      }
      assertThat(reading.positions().of(PlanPath.of("zones", 1, "device")).line()).isPositive();
      return reading;
    } catch (RuntimeException | StackOverflowError | AssertionError e) {
      throw new AssertionError("seed " + seed + ":\n" + new String(bytes, UTF_8), e);
    }
  }

  /** Forty thousand names that are declared nowhere, and as many that are. */
  @Test
  void manyWrongNamesAmongManyEndSoon() {
    StringBuilder text = new StringBuilder("keenward: 1\nsite: x\nmonitoring: { keyholders: [");
    for (int i = 0; i < 40_000; i++) {
      text.append("Nobody ").append(i).append(", ");
    }
    text.append("] }\npeople:\n");
    for (int i = 0; i < 40_000; i++) {
      text.append("  Someone ").append(i).append(": {}\n");
    }
    text.append("zones: {}\n");
    long start = System.nanoTime();
    assertThat(read(0, text.toString().getBytes(UTF_8)).problems()).hasSize(201);
    assertThat((System.nanoTime() - start) / 1_000_000_000L).as("seconds").isLessThan(60);
  }

  @Test
  void randomBytesAreRefused() {
    for (long seed = 0; seed < READINGS; seed++) {
      Random random = new Random(seed);
      byte[] bytes = new byte[random.nextInt(200)];
      random.nextBytes(bytes);
      assertThat(read(seed, bytes).problems()).as("seed %d", seed).isNotEmpty();
    }
  }

  @Test
  void aGoodPlanWithBytesChangedIsReadOrRefused() throws IOException {
    byte[] good = Files.readAllBytes(SitePlanReaderTest.FULL);
    int plans = 0;
    for (long seed = 0; seed < READINGS; seed++) {
      Random random = new Random(seed);
      byte[] bytes = good.clone();
      for (int changes = 1 + random.nextInt(2); changes > 0; changes--) {
        bytes[random.nextInt(bytes.length)] =
            random.nextBoolean()
                ? (byte) (' ' + random.nextInt(95))
                : good[random.nextInt(good.length)];
      }
      plans += read(seed, bytes).plan().isPresent() ? 1 : 0;
    }
    assertThat(plans).isBetween(READINGS / 100, READINGS * 9 / 10);
  }

  @Test
  void aGoodPlanWithPartsCutOrDoubledIsReadOrRefused() throws IOException {
    byte[] good = Files.readAllBytes(SitePlanReaderTest.FULL);
    for (long seed = 0; seed < READINGS; seed++) {
      Random random = new Random(seed);
      int from = random.nextInt(good.length);
      int to = from + random.nextInt(good.length - from);
      byte[] head = Arrays.copyOf(good, random.nextBoolean() ? from : to);
      byte[] bytes =
          Arrays.copyOf(head, head.length + good.length - (random.nextBoolean() ? to : from));
      int tail = bytes.length - head.length;
      System.arraycopy(good, good.length - tail, bytes, head.length, tail);
      read(seed, bytes);
    }
  }

  @Test
  void aGoodPlanWithOneValueOrNameReplacedIsReadOrRefused() throws IOException {
    byte[] good = Files.readAllBytes(SitePlanReaderTest.FULL);
    var document = YamlReader.read("full", good).document().orElseThrow();
    for (long seed = 0; seed < READINGS; seed++) {
      read(seed, YamlMutation.of(document, new Random(seed)).getBytes(UTF_8));
    }
  }
}
