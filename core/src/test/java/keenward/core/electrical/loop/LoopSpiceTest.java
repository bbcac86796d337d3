package keenward.core.electrical.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import keenward.core.electrical.Spice;
import keenward.core.plan.ContactForm;
import keenward.core.plan.LoopWiring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What loops read, against ngspice on circuits drawn contact by contact: two cores of cable, the
 * end-of-line resistor, and for each further resistor a switch across it.
 */
class LoopSpiceTest {

  private static final int LOOPS = 240;
  private static final double CLOSED_OHMS = 1e-6;
  private static final double OPEN_OHMS = 1e15;

  @TempDir Path folder;

  private final Random random = new Random(20_261_127);
  private final List<String> net = new ArrayList<>();
  private final List<String> nodes = new ArrayList<>();
  private final Map<String, Double> expected = new LinkedHashMap<>();

  @Test
  void bandsAgreeWithASimulator() throws IOException, InterruptedException {
    Spice.assumeInstalled();
    for (int i = 0; i < LOOPS; i++) {
      add(i);
    }

    Map<String, Double> volts = Spice.operatingPoint(folder, net, nodes);

    expected.forEach((node, ohms) ->
        assertThat(volts.get(node)).as(node).isCloseTo(ohms, within(0.001 * ohms + 1e-3)));
    assertThat(expected).hasSizeGreaterThan(1500);
  }

  private void add(int number) {
    LoopWiring wiring =
        List.of(LoopWiring.SINGLE_RESISTOR, LoopWiring.DOUBLE_RESISTOR, LoopWiring.TRIPLE_RESISTOR)
            .get(random.nextInt(3));
    List<Double> values = new ArrayList<>();
    String[] written = new String[wiring.resistors()];
    for (int i = 0; i < written.length; i++) {
      double ohms = StandardValues.nearestE24(500 + random.nextInt(20_000));
      values.add(ohms);
      written[i] = Math.round(ohms) + " ohm";
    }
    int metres = 1 + random.nextInt(800);
    LoopTolerances tolerances =
        new LoopTolerances(random.nextInt(5), 20_000 + random.nextInt(2_000_000), -10, 60, 0.01);
    Loop loop =
        LoopTest.loop(
            tolerances,
            wiring,
            ContactForm.NORMALLY_CLOSED,
            zone -> zone.loopCable(metres + " m", "0.22 mm2"),
            written);
    loop.bands()
        .forEach((state, band) -> {
          boolean isClosed = state != LoopState.SHORT && band.mostOhms() < Double.POSITIVE_INFINITY;
          if (isClosed) {
            boolean alarm = state == LoopState.IN_ALARM || state == LoopState.ALARM_AND_FAULT;
            boolean fault = state == LoopState.IN_FAULT || state == LoopState.ALARM_AND_FAULT;
            String name = "n" + number + "x" + state.name().toLowerCase(Locale.ROOT);
            draw(name + "a", values, alarm, fault, metres, 20, 1, 0, OPEN_OHMS, band.nominalOhms());
            draw(
                name + "b",
                values,
                alarm,
                fault,
                metres,
                -10,
                0.95,
                0,
                tolerances.leakageOhms(),
                band.leastOhms());
            draw(
                name + "c",
                values,
                alarm,
                fault,
                metres,
                60,
                1.05,
                tolerances.closedContactOhms(),
                OPEN_OHMS,
                band.mostOhms());
          }
        });
  }

  /** One ampere through the loop: its voltage is its resistance. */
  private void draw(
      String node,
      List<Double> values,
      boolean alarm,
      boolean fault,
      int metres,
      double celsius,
      double share,
      double contactOhms,
      double leakOhms,
      double expectedOhms) {
    // Copper of 1/58 ohm mm2/m at 20 C by its nominal area, warmed as IEC 60228 has it.
    double core = metres / 58.0 / 0.22 * (234.5 + celsius) / (234.5 + 20);
    net.add("I" + node + " 0 " + node + " 1");
    resistor(node + "l", node, "0", leakOhms);
    resistor(node + "h", node, node + "1", core);
    resistor(node + "k", node + "1", node + "2", Math.max(contactOhms, CLOSED_OHMS));
    resistor(node + "e", node + "2", node + "3", values.get(0) * share);
    String last = node + "3";
    if (values.size() >= 2) {
      resistor(node + "f", last, node + "4", values.get(1) * share);
      resistor(node + "g", last, node + "4", alarm ? OPEN_OHMS : CLOSED_OHMS);
      last = node + "4";
    }
    if (values.size() == 3) {
      resistor(node + "i", last, node + "5", values.get(2) * share);
      resistor(node + "j", last, node + "5", fault ? OPEN_OHMS : CLOSED_OHMS);
      last = node + "5";
    }
    resistor(node + "m", last, "0", core);
    nodes.add(node);
    expected.put(node, expectedOhms);
  }

  private void resistor(String name, String from, String to, double ohms) {
    net.add("R" + name + " " + from + " " + to + " " + Spice.number(ohms));
  }
}
