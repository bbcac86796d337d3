package keenward.cli;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import keenward.core.rules.catalogue.RuleRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class MainTest {

  private static final String FIVE_LINES =
      """
      keenward: 1
      site: Hilltop Kiosk
      zones:
        1: { name: Kiosk door,   response: entry-exit, device: contact }
        2: { name: Kiosk motion, response: follower,   device: motion }
        3: { name: Till button,  response: hold-up }
      """;

  @TempDir Path folder;

  @Test
  void printsItsNameAndTheVersionThatTheBuildGaveIt() {
    assertThat(CommandLineRun.of("--version").out().strip()).matches("keenward \\d+\\.\\d+\\.\\d+");
  }

  @Test
  void endsWithTwoAndAnExplanationWhenItIsUsedWrongly() {
    CommandLineRun run = CommandLineRun.of("--no-such-option");
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("--no-such-option");
  }

  @Test
  void findsJustTheTwoFaultsOfTheBakery() {
    CommandLineRun run = CommandLineRun.of("check", CommandLineRun.BAKERY.toString());
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).contains("2 errors", "holds 7 Ah", "Passage motion", "alarms at once");
    assertThat(run.out().lines().filter(line -> line.startsWith("ERROR"))).hasSize(2);
  }

  @Test
  void findsTheEightMistakesOfTheBoathouseAtTheLinesThatAreMarked() throws IOException {
    List<String> lines = Files.readAllLines(CommandLineRun.BOATHOUSE);
    String out = CommandLineRun.of("check", CommandLineRun.BOATHOUSE.toString()).out();
    int marked = 0;
    for (int number = 1; number <= lines.size(); number++) {
      if (lines.get(number - 1).matches(".*# mistake \\d:.*")) {
        marked++;
        assertThat(out).as(lines.get(number - 1)).containsPattern("\\.yaml:" + number + ":");
      }
    }
    assertThat(marked).isEqualTo(8);
  }

  private static final String FAR_BARN =
      """
      keenward: 1
      site: Far barn
      supplies: { Main: { voltage: 13.7 V } }
      devices:
        Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, supply: Main, load: power }
        Motion: { kind: motion, wiring: wired, standby current: 10 mA, alarm current: unknown, supply: Main }
      cables:
        C1: { from: Main, to: Siren, length: 180 m, conductor: 0.22 mm2 }
        C2: { from: Main, to: Motion, length: 180 m, conductor: 0.22 mm2 }
        C3: { from: Motion, to: Siren, length: 20 m, conductor: 0.22 mm2 }
      zones: { 1: { name: Barn door, response: entry-exit } }
      """;

  @Test
  void saysWhatCablesCarryAndWhatIsEnough() throws IOException {
    String clinic = CommandLineRun.CLINIC.toString();
    assertThat(CommandLineRun.of("wiring", clinic).out())
        .contains("Cables: ")
        .contains("Voltage at each place")
        .contains("For Landing sounder any one of these is enough:");
    JsonNode json =
        JsonMapper.shared().readTree(CommandLineRun.of("wiring", clinic, "--format", "json").out());
    double volts = json.at("/remedies/0/enough/0/volts").asDouble();
    assertThat(volts).isBetween(9.0, 10.5);
    assertThat(json.at("/networks/0/places/0/volts")).hasSize(3);
    Path barn = Files.writeString(folder.resolve("barn.site.yaml"), FAR_BARN);
    assertThat(CommandLineRun.of("wiring", barn.toString()).out())
        .contains("C1 and what hangs on it is a ring.")
        .contains(
            "! No steady voltage beyond C1: battery full, in alarm; end of discharge, in alarm")
        .contains("Beyond C1 a current is not known: voltages are at most these.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check",
        "power",
        "wiring",
        "loops",
        "radio",
        "coverage",
        "walks",
        "suggest",
        "rehearse",
        "testplan",
        "order",
        "plan show"
      })
  void runsEveryStageOnAPlanOfFiveLines(String command) throws IOException {
    Path site = Files.writeString(folder.resolve("kiosk.site.yaml"), FIVE_LINES);
    String[] words = (command + " " + site).split(" ", -1);
    CommandLineRun run = CommandLineRun.of(words);
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isLessThan(2);
    assertThat(run.out()).contains(command.equals("power") ? "not assessed" : "Kiosk");
  }

  @Test
  void callsAnEntrySheetUnprovedAndNeverAnOrder() throws IOException {
    Path site = Files.writeString(folder.resolve("kiosk.site.yaml"), FIVE_LINES);
    CommandLineRun run = CommandLineRun.of("order", site.toString());
    assertThat(run.out())
        .contains("UNPROVED", "panel: { description: ... }")
        .doesNotContain("Work order", "proof ");
  }

  @Test
  void saysEveryFaultOfAFileWithItsPlaceAndPrintsNoResult() throws IOException {
    Path site =
        Files.writeString(
            folder.resolve("kiosk.site.yaml"),
            FIVE_LINES
                .replace("follower", "folower")
                .replace("hold-up }", "hold-up, partition: Attic }"));
    CommandLineRun run = CommandLineRun.of("check", site.toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("kiosk.site.yaml:5:", "follower", "kiosk.site.yaml:6:", "Attic");
  }

  @Test
  void doesNotShowAStackTraceForAFileThatIsMissingOrAFolder() {
    for (String site : List.of(folder.toString(), folder.resolve("none.yaml").toString())) {
      CommandLineRun run = CommandLineRun.of("check", site);
      assertThat(run.exitCode()).isEqualTo(2);
      assertThat(run.err()).contains(":1:1: ").doesNotContain("Exception", "\tat ");
    }
  }

  @Test
  void printsJsonThatAProgramCanRead() {
    JsonNode json =
        JsonMapper.shared()
            .readTree(
                CommandLineRun.of("power", "--format", "json", CommandLineRun.BAKERY.toString())
                    .out());
    // The same sum by hand: (0.41 A x 24 h + 1.297 A x 4/60 h) x 1.119 x 1.25; NFPA 72 household
    // duty.
    double needed =
        json.at("/supplies/0/lines")
            .valueStream()
            .filter(line -> line.get("name").asString().equals("Capacity needed"))
            .findFirst()
            .orElseThrow()
            .get("value")
            .asDouble();
    assertThat(needed).isEqualTo((0.41 * 24 + 1.297 * 4 / 60) * 1.119 * 1.25, within(0.02));
  }

  @Test
  void makesAPlanOfAListAndNeverReplacesOneUnasked() throws IOException {
    Path list =
        Files.writeString(
            folder.resolve("mine.csv"),
            "No;Name;Sensor;Type\n1;Hall;PIR;INT FOLL\n2;Safe;box;odd\n");
    Path plan = folder.resolve("mine.site.yaml");
    CommandLineRun run =
        CommandLineRun.of("import-zones", list.toString(), "--out", plan.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("mine: 1 zones, 1 rows unplaced", "row 3, 'Type': problem:");
    assertThat(Files.readString(plan))
        .contains("1: { name: Hall, response: follower", "2; Safe; box");
    assertThat(CommandLineRun.of("check", plan.toString()).out()).contains("mine:", "2; Safe; box");

    Files.writeString(plan, "mine");
    CommandLineRun again =
        CommandLineRun.of("import-zones", list.toString(), "--out", plan.toString());
    assertThat(again.exitCode()).isEqualTo(2);
    assertThat(again.err()).contains("there is a file already", "--replace");
    assertThat(Files.readString(plan)).isEqualTo("mine");
    assertThat(
            CommandLineRun.of(
                    "import-zones", list.toString(), "--out", plan.toString(), "--replace")
                .exitCode())
        .isZero();
    assertThat(Files.readString(plan)).startsWith("# Imported from mine.csv");
  }

  @Test
  void refusesAListInWhichNothingIsUnderstood() throws IOException {
    Path list = Files.writeString(folder.resolve("shopping.csv"), "eggs;6\nmilk;2\n");
    Path plan = folder.resolve("x.site.yaml");
    CommandLineRun run =
        CommandLineRun.of("import-zones", list.toString(), "--out", plan.toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("shopping.csv:1:1: no zone was found", "--map");
    assertThat(plan).doesNotExist();
  }

  @ParameterizedTest
  @ValueSource(strings = {"zones.csv", "zones.xlsx"})
  void givesTheZonesBackSoThatTheyAreTheSame(String table) throws IOException {
    for (Path demo : List.of(CommandLineRun.BAKERY, CommandLineRun.BOATHOUSE)) {
      Path file = folder.resolve(table);
      Path back = folder.resolve("back.site.yaml");
      CommandLineRun.of("export-zones", demo.toString(), "--out", file.toString(), "--replace");
      CommandLineRun run =
          CommandLineRun.of("import-zones", file.toString(), "--out", back.toString(), "--replace");
      assertThat(run.out()).contains(" 0 rows unplaced").doesNotContain("problem:");
      assertThat(zones(back)).isEqualTo(zones(demo));
    }
  }

  private static List<String> zones(Path site) {
    return CommandLineRun.of("plan", "show", site.toString())
        .out()
        .lines()
        .filter(line -> line.matches(" +\\d+ .*"))
        .map(line -> String.join("|", List.of(line.strip().split(" {2,}", -1)).subList(0, 4)))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check",
        "power",
        "wiring",
        "loops",
        "radio",
        "coverage",
        "walks",
        "suggest",
        "rehearse",
        "testplan",
        "order"
      })
  void runsEveryStageOnASampleSite(String command) {
    Path site = folder.resolve("sample.site.yaml");
    assertThat(
            CommandLineRun.of("sample", "--zones", "120", "--out", site.toString(), "--replace")
                .out())
        .contains("120 zones written");
    CommandLineRun run = CommandLineRun.of(command, site.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isLessThan(2);
  }

  @Test
  void printsTheSampleThatASeedGivesAndRefusesImpossibleOnes() {
    String one = CommandLineRun.of("sample", "--zones", "5", "--seed", "9").out();
    assertThat(one).contains("site: Sample of 5 zones");
    assertThat(CommandLineRun.of("sample", "--zones", "5", "--seed", "9").out()).isEqualTo(one);
    CommandLineRun run = CommandLineRun.of("sample", "--zones", "10001");
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("--zones: 10001; expected 1 to 10000");
  }

  @Test
  void refusesATableWhoseNameTellsNoFormat() {
    CommandLineRun run =
        CommandLineRun.of(
            "export-zones",
            CommandLineRun.BAKERY.toString(),
            "--out",
            folder.resolve("z.pdf").toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains(".csv or .xlsx");
  }

  @Test
  void findsJustTheFourFaultsOfTheClinicAtTheirLines() throws IOException {
    List<String> lines = Files.readAllLines(CommandLineRun.CLINIC);
    String out = CommandLineRun.of("check", CommandLineRun.CLINIC.toString()).out();
    assertThat(out.lines().filter(line -> line.matches("(ERROR|WARNING) .*"))).hasSize(4);
    int marked = 0;
    for (int number = 1; number <= lines.size(); number++) {
      String line = lines.get(number - 1);
      if (line.contains("# deliberate fault: ")) {
        marked++;
        // A cable that is too thin is found where the device at its end starves.
        assertThat(out)
            .as(line)
            .contains(line.contains("too thin") ? "Landing sounder" : ".yaml:" + number + ":");
      }
    }
    assertThat(marked).isEqualTo(4);
  }

  @Test
  void saysHowMuchOfARoomIsWatchedAndWhereOneCanPassUnseen() {
    CommandLineRun run = CommandLineRun.of("coverage", CommandLineRun.BAKERY.toString());
    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .containsPattern("Cold store +nothing looks here")
        .containsPattern("Shop +\\d\\d % seen")
        .containsPattern("Landing: .* pass unseen between Bathroom door, Back bedroom door");
  }

  @Test
  void refusesAPanelThatNobodyDescribed() {
    CommandLineRun run =
        CommandLineRun.of("order", CommandLineRun.BAKERY.toString(), "--panel", "Nonesuch 9");
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("Nonesuch 9", "Marram 32");
  }

  @Test
  void runsAScriptAndSaysWhatWasNotAsExpected() throws IOException {
    Path script =
        Files.writeString(
            folder.resolve("morning.txt"),
            """
            14:30:00 arm away by Ines at "Passage keypad"
            """);
    CommandLineRun run =
        CommandLineRun.of("rehearse", CommandLineRun.BAKERY.toString(), script.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("14:31:00", "armed").doesNotContain("NOT AS EXPECTED");
  }

  @Test
  void endsWithOneWhenTheScriptExpectedSomethingElse() throws IOException {
    Path script =
        Files.writeString(
            folder.resolve("wrong.txt"),
            """
            14:30:00 arm away by Ines at "Passage keypad"
            expect 14:32:00 Bakery disarmed
            """);
    CommandLineRun run =
        CommandLineRun.of("rehearse", CommandLineRun.BAKERY.toString(), script.toString());
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).contains("NOT AS EXPECTED  2: ");
  }

  @Test
  void saysWhereAScriptIsWrong() throws IOException {
    Path script = Files.writeString(folder.resolve("bad.txt"), "25:99:00 opne \"Yard door\"\n");
    CommandLineRun run =
        CommandLineRun.of("rehearse", CommandLineRun.BAKERY.toString(), script.toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("bad.txt:1:");
  }

  @Test
  void writesTheWholePackOfASite() throws IOException {
    Path site = Files.writeString(folder.resolve("kiosk.site.yaml"), FIVE_LINES);
    Path out = folder.resolve("out");
    CommandLineRun run = CommandLineRun.of("job", site.toString(), "--out", out.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("Hilltop Kiosk", "entry sheet, UNPROVED", "out/kiosk");
    Path kiosk = out.resolve("kiosk");
    assertThat(Files.readString(kiosk.resolve("findings.txt"))).contains("Hilltop Kiosk");
    assertThat(Files.readString(kiosk.resolve("key-in.txt"))).contains("UNPROVED");
    assertThat(Files.readString(kiosk.resolve("test-plan.txt"))).contains("Kiosk door");
    assertThat(Files.readString(kiosk.resolve("rehearsal.txt"))).contains("Kiosk door");
    assertThat(Files.readAllBytes(kiosk.resolve("pack.pdf")))
        .startsWith("%PDF-".getBytes(US_ASCII));
    JsonNode result = JsonMapper.shared().readTree(Files.readString(kiosk.resolve("result.json")));
    assertThat(result.at("/site").asString()).contains("Hilltop Kiosk");
  }

  @Test
  void drawsEveryFloorWithoutAndWithCoverage() throws IOException {
    CommandLineRun.of("job", CommandLineRun.BOATHOUSE.toString(), "--out", folder.toString());
    Path boathouse = folder.resolve("weir-lane-boathouse");
    assertThat(Files.readString(boathouse.resolve("floor-1.svg"))).doesNotContain("seen by");
    assertThat(Files.readString(boathouse.resolve("coverage-1.svg")))
        .contains("seen by Workshop motion");
  }

  @Test
  void doesTheSitesThatItCanAndSaysWhatIsWrongWithTheOthers() throws IOException {
    Path good = Files.writeString(folder.resolve("kiosk.site.yaml"), FIVE_LINES);
    Path bad = Files.writeString(folder.resolve("bad.site.yaml"), "keenward: 1\nsit: x\n");
    Path twin =
        Files.writeString(
            Files.createDirectory(folder.resolve("twin")).resolve("kiosk.site.yaml"), FIVE_LINES);
    Path out = folder.resolve("out");
    CommandLineRun run =
        CommandLineRun.of(
            "papers",
            good.toString(),
            bad.toString(),
            twin.toString(),
            "--out",
            out.toString(),
            "--format",
            "json");
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(JsonMapper.shared().readTree(run.out()).size()).isEqualTo(1);
    assertThat(run.err()).contains("bad.site.yaml:2:", "short name 'kiosk'");
    assertThat(out.resolve("kiosk").resolve("pack.pdf")).exists();
    assertThat(out.resolve("bad")).doesNotExist();
  }

  @Test
  void leavesWhatStoodThereWhenTheFolderCannotBeMade() throws IOException {
    Path site = Files.writeString(folder.resolve("kiosk.site.yaml"), FIVE_LINES);
    Path taken = Files.writeString(folder.resolve("taken"), "mine");
    CommandLineRun run = CommandLineRun.of("job", site.toString(), "--out", taken.toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("taken").doesNotContain("Exception", "\tat ");
    assertThat(Files.readString(taken)).isEqualTo("mine");
  }

  @Test
  void provesAnOrderForADescribedPanel() throws IOException {
    Path site =
        Files.writeString(
            folder.resolve("kiosk.site.yaml"), FIVE_LINES + "panel: { description: Marram 32 }\n");
    CommandLineRun run = CommandLineRun.of("order", site.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("Work order: Hilltop Kiosk, Marram 32", "PROVED");
    JsonNode json =
        JsonMapper.shared()
            .readTree(CommandLineRun.of("order", site.toString(), "--format", "json").out());
    assertThat(json.findValue("keys").asInt()).isPositive();
    assertThat(run.out()).contains(json.findValue("keys").asInt() + " keys");
  }

  @Test
  void refusesAnOrderThatTheKeypadCannotShowAndSaysWhy() {
    CommandLineRun run =
        CommandLineRun.of("order", CommandLineRun.BAKERY.toString(), "--keypad", "words");
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).contains("No order for Quayside Bakery", "  > ").doesNotContain("PROVED");
  }

  @Test
  void refusesAFoundMemoryThatIsNotThere() {
    CommandLineRun run =
        CommandLineRun.of(
            "order", CommandLineRun.BAKERY.toString(), "--from", folder.resolve("no").toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(folder.resolve("no") + ":1:1:");
  }

  @Test
  void showsEverySettingAndWhereItCameFrom() throws IOException {
    Path site =
        Files.writeString(
            folder.resolve("kiosk.site.yaml"), FIVE_LINES + "panel: { exit time: 45 s }\n");
    String stated = CommandLineRun.of("plan", "show", site.toString()).out();
    String all = CommandLineRun.of("plan", "show", site.toString(), "--with-defaults").out();
    assertThat(stated).contains("45 s", "stated at").doesNotContain("default of");
    assertThat(all).contains("45 s", "stated at", "default of");
  }

  @Test
  void listsEveryRuleInBothFormats() {
    CommandLineRun text = CommandLineRun.of("rules");
    JsonNode json =
        JsonMapper.shared().readTree(CommandLineRun.of("rules", "--format", "json").out());
    assertThat(text.out().lines().filter(line -> line.matches("[A-Z]{3}-\\d\\d .*")))
        .hasSize(RuleRegistry.all().size());
    assertThat(json.findValues("code")).hasSize(RuleRegistry.all().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check",
        "power",
        "wiring",
        "loops",
        "radio",
        "coverage",
        "walks",
        "suggest",
        "rehearse",
        "testplan",
        "order"
      })
  void printsEveryStageAsJsonToo(String command) throws IOException {
    Path site = Files.writeString(folder.resolve("kiosk.site.yaml"), FIVE_LINES);
    JsonNode json =
        JsonMapper.shared()
            .readTree(CommandLineRun.of(command, site.toString(), "--format", "json").out());
    assertThat(json.at("/site").asString()).isEqualTo("Hilltop Kiosk");
  }

  @Test
  void reckonsRadioLineByLine() throws IOException {
    String clinic = CommandLineRun.CLINIC.toString();
    assertThat(CommandLineRun.of("radio", clinic).out())
        .contains(
            "Fitted to 7 measurements",
            "Loss of the distance: 20 log(4 pi x",
            "A receiver alone would hear best at",
            "Walk-test every device");
    JsonNode json =
        JsonMapper.shared().readTree(CommandLineRun.of("radio", clinic, "--format", "json").out());
    assertThat(json.at("/devices")).hasSize(14);
    assertThat(json.at("/devices/0/links/0/measuredDbm").asDouble()).isEqualTo(-63);
    assertThat(json.at("/devices/1/links/0").has("measuredDbm")).isFalse();
    assertThat(json.at("/measurements").asInt()).isEqualTo(7);
    assertThat(CommandLineRun.of("radio", clinic, "--format", "svg", "--floor", "Upper").out())
        .startsWith("<svg")
        .contains("class=\"radio\"", "dB in hand or more");
    Path site =
        Files.writeString(
            folder.resolve("shed.site.yaml"),
            """
            keenward: 1
            site: Shed
            panel: { radio supervision: 24 h }
            floors:
              Ground:
                wall material: metal
                rooms:
                  Hall: { outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                  Shed: { outline: [[6, 0], [12, 0], [12, 4], [6, 4]] }
            devices:
              Window: { kind: contact, wiring: radio, room: Shed, at: [11, 2], frequency: 868.3 MHz, radio power: -20 dBm, check-in: 60 min }
              Door: { kind: contact, wiring: radio, room: Hall, at: [3, 2], frequency: 868.3 MHz, radio power: unknown }
              Receiver: { kind: receiver, wiring: bus, room: Hall, at: [1, 2], frequency: 868.3 MHz, sensitivity: -95 dBm }
            zones: { 1: { name: Window, response: instant, device: Window } }
            """);
    assertThat(CommandLineRun.of("radio", site.toString()).out())
        .contains(
            "not heard",
            "A repeater would help",
            "Not fitted to the house: 0 measured levels",
            "'Door' sends; add `radio power: 10 dBm`");
    assertThat(CommandLineRun.of("radio", site.toString(), "--format", "json").out())
        .doesNotContain("NaN", "Infinity");
  }

  @Test
  void showsWhatLoopsReadAndHowLongTheirCablesMayBe() throws IOException {
    assertThat(CommandLineRun.of("loops", CommandLineRun.BAKERY.toString()).out())
        .contains(
            "zones 1 Yard door, 2 Passage motion", "at rest and in alarm at 7 kohm: 26 % to spare");
    Path site =
        Files.writeString(
            folder.resolve("shed.site.yaml"),
            """
            keenward: 1
            site: Shed
            panel: { loop thresholds: { single resistor: [1 kohm, 5 kohm] } }
            zones:
              1: { name: Door, response: instant, wiring: single resistor, resistors: [4.7 kohm], contact: normally-closed, loop cable: { length: 20 m, conductor: 0.22 mm2 } }
              2: { name: Hatch, response: instant, wiring: single resistor, resistors: [5.1 kohm], contact: normally-closed }
              3: { name: Gate, response: instant, wiring: double resistor, contact: normally-closed }
            """);
    assertThat(CommandLineRun.of("loops", site.toString()).out())
        .contains(
            "20 m of cable",
            "Told apart up to",
            "! at rest and in alarm or cut at 5 kohm",
            "Not assessed");
    JsonNode json =
        JsonMapper.shared()
            .readTree(CommandLineRun.of("loops", site.toString(), "--format", "json").out());
    assertThat(json.at("/loops/0/longestMetres").asDouble()).isGreaterThan(20);
    assertThat(json.at("/loops/1/steps/1/spareShare").asDouble()).isNegative();
    assertThat(json.at("/loops/0/states/2").has("nominalOhms")).as("an open loop").isFalse();
    JsonNode reading =
        JsonMapper.shared()
            .readTree(
                CommandLineRun.of(
                        "loops",
                        site.toString(),
                        "--zone",
                        "1",
                        "--measured",
                        "open",
                        "--format",
                        "json")
                    .out());
    assertThat(reading.has("measuredOhms")).isFalse();
    assertThat(reading.at("/diagnoses/0/what").asString()).contains("in alarm or cut");
  }

  @Test
  void showsBeamsAndTheZoneUnderADetector() throws IOException {
    Path site =
        Files.writeString(
            folder.resolve("shed.site.yaml"),
            """
            keenward: 1
            site: Shed
            floors:
              Ground:
                rooms: { Store: { outline: [[0, 0], [12, 0], [12, 8], [0, 8]] } }
                furniture: { Shelf: { outline: [[3, 2], [5, 2], [5, 4], [3, 4]], height: 2 m } }
            devices:
              Long beam:  { kind: beam, room: Store, at: [0.1, 7], ends at: [11.9, 7] }
              Short beam: { kind: beam, room: Store, at: [0.1, 3], ends at: [11.9, 3] }
              Ear: { kind: glass-break, room: Store, at: [6, 0.1], coverage: { pattern: sphere, range: 5 m } }
              Eye: { kind: motion, room: Store, at: [0.1, 0.1], height: 2.6 m, bearing: 60 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg, looks down: 45 deg } }
              Up:  { kind: motion, room: Store, at: [11.9, 0.1], height: 2.6 m, bearing: 300 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg, looks down: 0 deg } }
            zones:
              1: { name: Store, response: instant, devices: [Long beam, Short beam, Ear, Eye, Up] }
            """);
    assertThat(CommandLineRun.of("coverage", site.toString()).out())
        .contains("Long beam   11.8 m  clear", "Short beam  11.8 m  something stands in its way")
        .contains("Nobody nearer than 1.0 m is seen by Eye.", "Nobody at all is seen by Up.");
    JsonNode json =
        JsonMapper.shared()
            .readTree(CommandLineRun.of("coverage", site.toString(), "--format", "json").out());
    assertThat(json.at("/beams/1/clear").asBoolean()).isFalse();
    assertThat(json.at("/glassBreak/0/name").asString()).isEqualTo("Ear");
    assertThat(json.at("/detectors/1").has("blindMetres")).isFalse();
    assertThat(json.at("/detectors/0/blindMetres").asDouble()).isEqualTo(1, offset(1e-9));
  }

  @Test
  void tellsWhatAMeasuredLoopMeans() {
    String bakery = CommandLineRun.BAKERY.toString();
    CommandLineRun run =
        CommandLineRun.of("loops", bakery, "--zone", "2", "--measured", "2.35 kohm");
    assertThat(run.out())
        .contains("1. A second end-of-line resistor", "4.7 kohm beside 4.7 kohm make 2.35 kohm")
        .contains("put the account on test first");
    assertThat(CommandLineRun.of("loops", bakery, "--zone", "2", "--measured", "open").out())
        .contains("1. The loop is cut.");
    for (List<String> wrong :
        List.of(
            List.of("--zone", "2"),
            List.of("--measured", "1 kohm"),
            List.of("--zone", "2", "--measured", "-1 ohm"),
            List.of("--zone", "2", "--measured", "4.7"),
            List.of("--zone", "999", "--measured", "4.7 kohm"))) {
      List<String> words = new ArrayList<>(List.of("loops", bakery));
      words.addAll(wrong);
      CommandLineRun refused = CommandLineRun.of(words.toArray(new String[0]));
      assertThat(refused.exitCode()).as(String.join(" ", wrong)).isEqualTo(2);
      assertThat(refused.err()).contains("expected");
    }
  }

  @Test
  void drawsThePictureOfAFloorWithItsRooms() throws IOException {
    Path svg = folder.resolve("boathouse.svg");
    CommandLineRun run =
        CommandLineRun.of("trace", CommandLineRun.BOATHOUSE.toString(), "--out", svg.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Ground drawn to");
    assertThat(svg).content().contains("data:image/png", ">Boat hall<", "28 m apart");
    CommandLineRun again =
        CommandLineRun.of("trace", CommandLineRun.BOATHOUSE.toString(), "--out", svg.toString());
    assertThat(again.exitCode()).isEqualTo(2);
    assertThat(again.err()).contains("--replace");
  }

  @Test
  void refusesAPortThatIsNone() {
    CommandLineRun run =
        CommandLineRun.of("serve", CommandLineRun.BAKERY.toString(), "--port", "65536");
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("65536", "1 to 65535");
  }

  @Test
  void saysWhenAPortIsTaken() throws IOException {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      CommandLineRun run =
          CommandLineRun.of(
              "serve",
              CommandLineRun.BAKERY.toString(),
              "--port",
              Integer.toString(taken.getLocalPort()));
      assertThat(run.exitCode()).isEqualTo(2);
      assertThat(run.err()).contains(Integer.toString(taken.getLocalPort()), "cannot be opened");
    }
  }
}
