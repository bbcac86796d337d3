package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Runs Debian's ngspice, a circuit simulator, on a netlist. */
public final class Spice {

  private static final Pattern VOLTAGE =
      Pattern.compile("^v\\((\\w+)\\) = (\\S+)$", Pattern.MULTILINE);

  private Spice() {}

  /** Skips the calling test where ngspice is not installed, and says so. */
  public static void assumeInstalled() {
    boolean isThere =
        List.of(System.getenv("PATH").split(":", -1)).stream()
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, "ngspice")));
    if (!isThere) {
      System.err.println("SKIPPED: ngspice is not installed, so nothing is compared with it");
    }
    assumeTrue(isThere, "ngspice is not installed");
  }

  /**
   * Voltages of a circuit at rest.
   *
   * @param elements lines of the netlist
   * @param nodes the nodes to be told
   */
  public static Map<String, Double> operatingPoint(
      Path folder, List<String> elements, List<String> nodes)
      throws IOException, InterruptedException {
    StringBuilder net = new StringBuilder("keenward\n");
    elements.forEach(line -> net.append(line).append('\n'));
    net.append(".control\nset numdgt=12\nop\n");
    nodes.forEach(node -> net.append("print v(").append(node).append(")\n"));
    net.append("quit\n.endc\n.end\n");
    Path file = Files.writeString(folder.resolve("circuit.net"), net);
    Path output = folder.resolve("circuit.out");
    Process process =
        new ProcessBuilder("ngspice", "-b", file.toString())
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    String text = Files.readString(output);
    Map<String, Double> volts = new HashMap<>();
    for (MatchResult line : VOLTAGE.matcher(text).results().toList()) {
      volts.put(line.group(1), Double.parseDouble(line.group(2)));
    }
    assertThat(volts.keySet()).as(text).containsAll(nodes);
    return volts;
  }

  /** A number as a netlist takes it. */
  public static String number(double value) {
    return String.format(Locale.ROOT, "%.12e", value);
  }
}
