package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Standard;
import org.junit.jupiter.api.Test;

/** What has to hold for any figures. */
class PowerPropertiesTest {
  @Test
  void moreLoadOrMoreColdNeverNeedsASmallerBattery() {
    long seed = 60896L;
    Random random = new Random(seed);
    for (int round = 0; round < 300; round++) {
      int rest = random.nextInt(500);
      int alarm = rest + random.nextInt(2000);
      int celsius = random.nextInt(50);
      double need = need(rest, alarm, celsius);
      String where = "seed %d round %d".formatted(seed, round);
      assertThat(need(rest + 1 + random.nextInt(50), alarm, celsius)).as(where).isGreaterThan(need);
      assertThat(need(rest, alarm + 1 + random.nextInt(50), celsius)).as(where).isGreaterThan(need);
      assertThat(need(rest, alarm, celsius - 1 - random.nextInt(3)))
          .as(where)
          .isGreaterThanOrEqualTo(need);
    }
  }

  @Test
  void theChosenSizeIsNeverBelowTheNeedAndTheNextSmallerOneIs() {
    long seed = 12L;
    Random random = new Random(seed);
    for (int round = 0; round < 1000; round++) {
      double need = random.nextDouble() * 100;
      double size = BatterySizes.nextUp(need).orElseThrow();
      assertThat(size).as("seed %d round %d", seed, round).isGreaterThanOrEqualTo(need);
      assertThat(BatterySizes.nextUp(Math.nextUp(size)).orElse(Double.MAX_VALUE))
          .isGreaterThan(size);
    }
  }

  private static double need(int rest, int alarm, int celsius) {
    return PowerAssessment.of(
            PlanBuilder.site()
                .regime(Standard.UL1023)
                .supply("Main", main -> main.own("0 mA", "0 mA").lowestTemperature(celsius + " C"))
                .device(
                    "Load",
                    DeviceKind.EXPANDER,
                    load -> load.bus().draws(rest + " mA", alarm + " mA"))
                .build())
        .supplies()
        .getFirst()
        .strictest()
        .orElseThrow()
        .needed()
        .value();
  }
}
