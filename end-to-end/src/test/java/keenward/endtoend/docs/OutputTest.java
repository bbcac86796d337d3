package keenward.endtoend.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import keenward.endtoend.Finished;
import keenward.endtoend.Repository;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page on output and the program agree on every key, its type, and the exit codes. */
class OutputTest {

  private static final Path PAGE = Repository.root().resolve("docs/reference/output.md");
  private static final Pattern ROW =
      Pattern.compile(
          "^\\| `([^`]+)` \\| (text|number|boolean|list|object) \\|", Pattern.MULTILINE);
  private static final String COLLAPSE =
      """
      keenward: 1
      site: Far barn
      supplies: { Main: { voltage: 13.7 V } }
      devices:
        Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, supply: Main, load: power }
      cables: { C1: { from: Main, to: Siren, length: 90 m, conductor: 0.22 mm2 } }
      zones: { 1: { name: Barn door, response: entry-exit } }
      """;
  private static final String BAKERY = demo("bakery/quayside-bakery.site.yaml");
  private static final String CLINIC = demo("clinic/heron-lane-vets.site.yaml");
  private static final String BOATHOUSE = demo("boathouse/weir-lane-boathouse.site.yaml");

  /** A supply about which nearly nothing is known. */
  private static final String KIOSK =
      """
      keenward: 1
      site: Hilltop Kiosk
      zones: { 1: { name: Kiosk door, response: entry-exit, device: contact } }
      supplies: { Main: { battery: { capacity: 7 Ah } } }
      """;

  private static final String BARE =
      """
      keenward: 1
      site: Hilltop Kiosk
      zones: { 1: { name: Kiosk door, response: entry-exit } }
      """;

  /** A detector of which nobody said where it hangs. */
  private static final String BLIND =
      """
      keenward: 1
      site: Hilltop Kiosk
      zones: { 1: { name: Kiosk motion, response: follower, device: Eye } }
      devices: { Eye: { kind: motion } }
      """;

  private static final String LOOP =
      """
      keenward: 1
      site: Hilltop Kiosk
      panel: { loop thresholds: { single resistor: [1 kohm, 8 kohm] } }
      zones:
        1: { name: Door, response: instant, wiring: single resistor, resistors: [4.7 kohm], contact: normally-closed, loop cable: { length: 20 m, conductor: 0.22 mm2 } }
        2: { name: Hatch, response: instant, wiring: single resistor }
      """;

  /** A device that needs a repeater, one of unknown power and one of another band. */
  private static final String FAINT =
      """
      keenward: 1
      site: Hilltop Kiosk
      floors: { Ground: { wall material: metal, rooms: { Store: { outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }, Shed: { outline: [[6, 0], [12, 0], [12, 4], [6, 4]] } } } }
      zones: { 1: { name: Window, response: instant, device: Window } }
      devices:
        Window: { kind: contact, wiring: radio, room: Shed, at: [11, 2], frequency: 868.3 MHz, radio power: -20 dBm, check-in: 60 min }
        Old: { kind: contact, wiring: radio, room: Shed, at: [11, 2], frequency: 433.92 MHz, radio power: -20 dBm, check-in: 60 min }
        Door: { kind: contact, wiring: radio, room: Store, at: [3, 2], frequency: 868.3 MHz, radio power: unknown }
        Receiver: { kind: receiver, wiring: bus, room: Store, at: [1, 2], frequency: 868.3 MHz, sensitivity: -95 dBm }
      """;

  private static final String BEAM =
      """
      keenward: 1
      site: Hilltop Kiosk
      floors: { Ground: { rooms: { Store: { outline: [[0, 0], [6, 0], [6, 4], [0, 4]] } } } }
      zones: { 1: { name: Store beam, response: instant, device: Beam } }
      devices: { Beam: { kind: beam, room: Store, at: [0.1, 2], ends at: [5.9, 2] } }
      """;

  @TempDir private Path folder;

  @Test
  void check() throws IOException {
    assertThat(printed("check", BAKERY, kiosk())).isEqualTo(documented("check"));
  }

  @Test
  void power() throws IOException {
    assertThat(printed("power", BAKERY, BOATHOUSE, kiosk(), bare())).isEqualTo(documented("power"));
  }

  @Test
  void wiring() throws IOException {
    assertThat(printed("wiring", CLINIC, bare(), collapse())).isEqualTo(documented("wiring"));
  }

  @Test
  void loops() throws IOException {
    assertThat(printed("loops", BAKERY, loop())).isEqualTo(documented("loops"));
  }

  @Test
  void radio() throws IOException {
    assertThat(printed("radio", CLINIC, faint())).isEqualTo(documented("radio"));
  }

  @Test
  void coverage() throws IOException {
    assertThat(printed("coverage", BAKERY, blind(), beam())).isEqualTo(documented("coverage"));
  }

  @Test
  void walks() throws IOException {
    assertThat(printed("walks", BAKERY, kiosk())).isEqualTo(documented("walks"));
  }

  @Test
  void suggest() throws IOException {
    assertThat(printed("suggest", BAKERY, blind())).isEqualTo(documented("suggest"));
  }

  @Test
  void importZones() throws IOException {
    Path list = Files.writeString(folder.resolve("list.csv"), "No;Name;Sensor\n1;Hall;PIR\n");
    String plan = folder.resolve("list.site.yaml").toString();
    Finished run = Program.run("import-zones", list.toString(), "--out", plan, "--format", "json");
    Map<String, String> keys = new TreeMap<>();
    collect(JsonMapper.shared().readTree(run.output()), "", keys);

    assertThat(keys).isEqualTo(table("### import-zones"));
    assertThat(run.exitCode()).isZero();
  }

  @Test
  void rehearse() throws IOException {
    Path script = folder.resolve("away.script");
    Files.writeString(
        script, "14:30:00 arm away by Ines at \"Passage keypad\"\nexpect no signal\n");
    Map<String, String> keys = printed("rehearse", kiosk());
    Finished unmet = Program.run("rehearse", "--format", "json", BAKERY, script.toString());
    collect(JsonMapper.shared().readTree(unmet.output()), "", keys);

    assertThat(keys).isEqualTo(documented("rehearse"));
    assertThat(unmet.exitCode()).isEqualTo(1);
  }

  @Test
  void order() throws IOException {
    assertThat(printed("order", BAKERY, BOATHOUSE, kiosk())).isEqualTo(documented("order"));
  }

  @Test
  void testplan() throws IOException {
    assertThat(printed("testplan", BAKERY, bare())).isEqualTo(documented("testplan"));
  }

  @Test
  void jobAndTheResultThatItWrites() throws IOException {
    Map<String, String> keys = new TreeMap<>();
    Finished job = Program.run("job", "--format", "json", "--out", folder.toString(), kiosk());
    collect(JsonMapper.shared().readTree(job.output()), "", keys);

    assertThat(keys).isEqualTo(table("### job"));

    Map<String, String> written = new TreeMap<>();
    collect(
        JsonMapper.shared().readTree(Files.readString(folder.resolve("kiosk/result.json"))),
        "",
        written);
    assertThat(documentedResult()).containsAllEntriesOf(written);
    Map<String, String> outer = new TreeMap<>(written);
    outer.keySet().removeIf(key -> key.contains("."));
    assertThat(outer).isEqualTo(documented("result.json"));
  }

  @Test
  void rules() throws IOException {
    Map<String, String> keys = new TreeMap<>();
    collect(
        JsonMapper.shared().readTree(Program.run("rules", "--format", "json").output()), "", keys);

    assertThat(keys).isEqualTo(table("### rules"));
  }

  @Test
  void exitCodes() throws IOException {
    assertThat(Program.run("check", kiosk()).exitCode()).isZero();
    assertThat(Program.run("check", BOATHOUSE).exitCode()).isEqualTo(1);
    assertThat(Program.run("order", kiosk()).exitCode()).isZero();
    assertThat(Program.run("order", BOATHOUSE).exitCode()).isEqualTo(1);
    assertThat(Program.run("power", BOATHOUSE).exitCode()).isZero();
    assertThat(Program.run("check", folder.resolve("none.yaml").toString()).exitCode())
        .isEqualTo(2);
    assertThat(Program.run("check", "--nonsense").exitCode()).isEqualTo(2);
    assertThat(
            Program.run(
                    "job",
                    "--out",
                    folder.toString(),
                    folder.resolve("none.yaml").toString(),
                    bare())
                .exitCode())
        .isEqualTo(2);
    assertThat(folder.resolve("bare/result.json")).isNotEmptyFile();
  }

  private String kiosk() throws IOException {
    return Files.writeString(folder.resolve("kiosk.site.yaml"), KIOSK).toString();
  }

  private String blind() throws IOException {
    return Files.writeString(folder.resolve("blind.site.yaml"), BLIND).toString();
  }

  private String collapse() throws IOException {
    return Files.writeString(folder.resolve("collapse.site.yaml"), COLLAPSE).toString();
  }

  private String loop() throws IOException {
    return Files.writeString(folder.resolve("loop.site.yaml"), LOOP).toString();
  }

  private String faint() throws IOException {
    return Files.writeString(folder.resolve("faint.site.yaml"), FAINT).toString();
  }

  private String beam() throws IOException {
    return Files.writeString(folder.resolve("beam.site.yaml"), BEAM).toString();
  }

  private String bare() throws IOException {
    return Files.writeString(folder.resolve("bare.site.yaml"), BARE).toString();
  }

  private static String demo(String file) {
    return Repository.root().resolve("demo").resolve(file).toString();
  }

  private static Map<String, String> printed(String command, String... sites) {
    Map<String, String> keys = new TreeMap<>();
    for (String site : sites) {
      Finished finished = Program.run(command, "--format", "json", site);
      assertThat(finished.errors()).isEmpty();
      collect(JsonMapper.shared().readTree(finished.output()), "", keys);
    }
    return keys;
  }

  private static void collect(JsonNode node, String path, Map<String, String> keys) {
    if (node.isArray()) {
      node.valueStream().forEach(element -> collect(element, path + "[]", keys));
    } else if (node.isObject()) {
      for (Map.Entry<String, JsonNode> property : node.properties()) {
        String key = path.isEmpty() ? property.getKey() : path + "." + property.getKey();
        String type = type(property.getValue());
        assertThat(keys.getOrDefault(key, type)).as(key).isEqualTo(type);
        keys.put(key, type);
        collect(property.getValue(), key, keys);
      }
    }
  }

  private static String type(JsonNode node) {
    return switch (node.getNodeType()) {
      case STRING -> "text";
      case NUMBER -> "number";
      case BOOLEAN -> "boolean";
      case ARRAY -> "list";
      case OBJECT -> "object";
      default -> throw new AssertionError("undocumented kind of value: " + node.getNodeType());
    };
  }

  /** The keys of a section, with those that open every result. */
  private static Map<String, String> documented(String section) throws IOException {
    Map<String, String> keys = table("### " + section);
    keys.putAll(table("## JSON"));
    return keys;
  }

  private static Map<String, String> documentedResult() throws IOException {
    Map<String, String> keys = documented("result.json");
    Map<String, String> parts =
        Map.of(
            "check", "check",
            "power", "power",
            "keyIn", "order",
            "rehearsal", "rehearse",
            "testPlan", "testplan");
    for (Map.Entry<String, String> part : parts.entrySet()) {
      table("### " + part.getValue())
          .forEach((key, type) -> keys.put(part.getKey() + "." + key, type));
    }
    return keys;
  }

  private static Map<String, String> table(String heading) throws IOException {
    String page = Files.readString(PAGE);
    int begin = page.indexOf("\n" + heading + "\n");
    assertThat(begin).as(heading).isNotNegative();
    int end = page.indexOf("\n##", begin + heading.length());
    Map<String, String> keys = new TreeMap<>();
    Matcher rows = ROW.matcher(page.substring(begin, end < 0 ? page.length() : end));
    while (rows.find()) {
      keys.put(Objects.requireNonNull(rows.group(1)), Objects.requireNonNull(rows.group(2)));
    }
    assertThat(keys).as(heading).isNotEmpty();
    return keys;
  }
}
