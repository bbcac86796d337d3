package keenward.files.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Partition;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.Regime;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.plan.TimeOfDay;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.quantities.Length;
import keenward.core.quantities.Span;
import keenward.files.Problem;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SitePlanReaderTest {

  static final Path FULL = Path.of("src/test/resources/plan/every-field.site.yaml");

  private static SitePlan plan(String text) {
    PlanReading reading = ExamplePlan.read(text);
    assertThat(reading.problems()).isEmpty();
    return reading.plan().orElseThrow();
  }

  private static SitePlan fullPlan() throws IOException {
    PlanReading reading = SitePlanReader.read("full", Files.readAllBytes(FULL));
    assertThat(reading.problems()).isEmpty();
    return reading.plan().orElseThrow();
  }

  @Test
  void threeZonesInFiveLinesAreAPlan() {
    SitePlan plan =
        plan(
            """
            keenward: 1
            site: Quay
            zones:
              1: { name: Shop door, response: entry-exit, device: contact }
              2: { name: Shop motion, response: follower }
            """);
    assertThat(plan.site().name()).isEqualTo("Quay");
    assertThat(plan.partitions()).containsExactly(Partition.ONLY);
    assertThat(plan.hasPartitions()).isFalse();
    assertThat(plan.monitoring()).isEqualTo(Fact.missing());
    assertThat(plan.zones()).extracting(Zone::partitions).containsOnly(List.of("System"));
    assertThat(plan.zones().getFirst().devices())
        .containsExactly(new ZoneDevice.Unplaced(DeviceKind.CONTACT));
    assertThat(plan.zones().getLast().response()).isEqualTo(ZoneResponse.FOLLOWER);
    assertThat(plan.zones().getLast().devices()).isEmpty();
  }

  @Test
  void everyFieldArrivesWhereItBelongs() throws IOException {
    SitePlan plan = fullPlan();
    assertThat(plan.site().addressLines()).containsExactly("4 Mill Lane", "Underford");
    assertThat(plan.site().reference()).isEqualTo(Fact.of("K-0007"));
    assertThat(plan.monitoring().find().orElseThrow().account()).isEqualTo(Fact.of("0471"));
    assertThat(plan.findDevice("Shop motion").orElseThrow().serial()).isEqualTo(Fact.unknown());
    assertThat(plan.people().getFirst().habits().getFirst().time())
        .isEqualTo(Fact.of(new TimeOfDay(250)));
    assertThat(plan.floors().getFirst().rooms().get(1).outline()).contains(new Point(6, 5));
    assertThat(plan.floors().getFirst().openings().getFirst().place())
        .isEqualTo(new EdgeSelector("Shop", "outside", Fact.of(1)));
    assertThat(plan.findDevice("Shop door contact").orElseThrow().traits().inputs())
        .containsExactly("contact", "terminals", "lid");
    assertThat(plan.findDevice("Shop door contact").orElseThrow().fitted())
        .isEqualTo(Fact.of(LocalDate.of(2026, 10, 2)));
    assertThat(plan.supplies().getFirst().ageingFactor()).isEqualTo(Fact.of(1.25));
    assertThat(plan.cables()).extracting("from").containsExactly("Main", "Roof box");
    assertThat(plan.panel().entryDelays())
        .isEqualTo(Map.of(1, new Span(30_000, "30 s"), 2, new Span(90_000, "90 s")));
    assertThat(plan.panel().crossZones().getFirst().zones()).containsExactly(2, 4);
    assertThat(plan.findPartition("Hall").orElseThrow().commonTo()).containsExactly("Shop", "Flat");
    Zone second = plan.findZone(2).orElseThrow();
    assertThat(second.devices()).hasSize(2);
    assertThat(((ZoneDevice.Fitted) second.devices().get(1)).inputName()).isEqualTo("terminals");
    assertThat(second.liveIn()).containsExactly(ArmingMode.AWAY);
    assertThat(second.event()).isEqualTo(Fact.of(132));
    assertThat(plan.users().getFirst().partitions()).containsExactly("Shop", "Flat");
    assertThat(plan.users().getLast().partitions()).containsExactly("Shop", "Flat", "Hall");
    assertThat(plan.service().find().orElseThrow().interval().find().orElseThrow().months())
        .isEqualTo(12);
    assertThat(plan.unplaced().getFirst().why()).isEqualTo("zone 13 is there already");
  }

  /**
   * No component of any record of the plan is left at "missing" or empty by the sample that states
   * every field once.
   */
  @Test
  void theSampleStatesEveryFactOfTheModel() throws IOException {
    Assertions.assertThat(MissingComponents.of(fullPlan())).isEmpty();
  }

  @Test
  void unitsStayAsWrittenAndFeetBecomeMetres() {
    SitePlan plan =
        plan(
            """
            floors:
              Ground:
                unit: ft
                height: 10 ft
                rooms: { Shop: { outline: [[0, 0], [10, 0], [10, 10]] } }
            devices:
              Eye: { kind: motion, room: Shop, at: [1, 2], height: 2300 mm }
            """);
    assertThat(plan.floors().getFirst().height().map(Length::written)).isEqualTo(Fact.of("10 ft"));
    assertThat(plan.floors().getFirst().rooms().getFirst().outline().get(1))
        .isEqualTo(new Point(3.048, 0));
    assertThat(plan.devices().getFirst().at()).isEqualTo(Fact.of(new Point(0.3048, 0.6096)));
    assertThat(plan.devices().getFirst().height().map(Length::metres)).isEqualTo(Fact.of(2.3));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          cp-01                                        | CP_01    | cp-01
          cp-01 2010                                   | CP_01    | cp-01 2010
          en50131 grade 2                              | EN50131  | en50131 grade 2
          en50131 2006 grade 3                         | EN50131  | en50131 2006 grade 3
          { standard: en50131, edition: 2006, grade: 2 } | EN50131 | en50131 2006 grade 2
          insurer 2024                                 | OTHER    | insurer 2024
          the rules of the house                       | OTHER    | the rules of the house
          """)
  void aRegimeCarriesEditionAndGrade(String written, Standard standard, String words) {
    List<Regime> one = plan("regime: " + written).regimes();
    assertThat(one).singleElement().extracting(Regime::standard).isEqualTo(standard);
    assertThat(one.getFirst().words()).isEqualTo(words);
    assertThat(plan("regime: [" + written + ", ul1023]").regimes())
        .hasSize(2)
        .contains(one.getFirst());
  }

  @ParameterizedTest
  @CsvSource({"en50131 grade 7", "cp-01 2010 and more", "en50131 grade", "cp-01 grade two"})
  void aKnownRegimeWithAnUnreadableTailIsRefused(String written) {
    assertThat(ExamplePlan.read("regime: " + written).problems())
        .singleElement()
        .asString()
        .contains("expected a standard, its edition and its grade");
  }

  @Test
  void aTypeFillsInWhatADeviceDoesNotSay() {
    SitePlan plan =
        plan(
            """
            types: { eye: { kind: motion, standby current: 12 mA, alarm current: unknown } }
            devices:
              One: { type: eye }
              Two: { type: eye, standby current: unknown, kind: dual-motion }
            """);
    assertThat(plan.devices().get(0).kind()).isEqualTo(DeviceKind.MOTION);
    assertThat(plan.devices().get(0).traits().standbyCurrent().isGiven()).isTrue();
    assertThat(plan.devices().get(0).traits().alarmCurrent()).isEqualTo(Fact.unknown());
    assertThat(plan.devices().get(1).kind()).isEqualTo(DeviceKind.DUAL_MOTION);
    assertThat(plan.devices().get(1).traits().standbyCurrent()).isEqualTo(Fact.unknown());
  }

  @Test
  void aDeclaredDeviceComesBeforeAPlainKindOfThatName() {
    SitePlan plan =
        plan(
            "devices: { keypad: { kind: smoke } }\nzones: { 1: { name: a, response: fire, device: keypad } }");
    assertThat(plan.zones().getFirst().devices().getFirst().kind()).isEqualTo(DeviceKind.SMOKE);
  }

  @Test
  void positionsLeadToTheNearestPlaceOfTheFile() {
    PlanReading reading = ExamplePlan.read("zones:\n  1: { name: a, response: fire }\n");
    assertThat(reading.positions().of(PlanPath.of("zones", 1, "response")))
        .hasToString("example.site.yaml:4:17");
    assertThat(reading.positions().of(PlanPath.of("zones", 1, "device")))
        .hasToString("example.site.yaml:4:3");
    assertThat(reading.positions().of(PlanPath.of("users", 1)))
        .hasToString("example.site.yaml:1:1");
    PlanReading broken = ExamplePlan.read("zones: [");
    assertThat(broken.positions().of(PlanPath.of("zones"))).hasToString("example.site.yaml:1:1");
  }

  static Stream<Path> demoSites() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("../demo"))) {
      return files.filter(file -> file.toString().endsWith(".site.yaml")).toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("demoSites")
  void demoSitesAreRead(Path file) throws IOException {
    PlanReading reading =
        SitePlanReader.read(file.getFileName().toString(), Files.readAllBytes(file));
    assertThat(reading.problems()).extracting(Problem::message).isEmpty();
  }
}
