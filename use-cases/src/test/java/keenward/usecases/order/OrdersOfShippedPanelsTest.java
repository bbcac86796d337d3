package keenward.usecases.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Set;
import keenward.core.progress.Progress;
import keenward.usecases.job.JobOptions;
import keenward.usecases.job.Keenward;
import keenward.usecases.panel.PanelFinder;
import keenward.usecases.site.SiteFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Orders for the panels that ship, small and large, from factory values and from nothing known. */
class OrdersOfShippedPanelsTest {

  /** Codes are never shown, so overwriting them is consented to. */
  private static final Set<String> CONSENTS = Set.of("person.code");

  private static final String THREE_ZONES =
      """
      keenward: 1
      site: Hilltop Kiosk
      panel: { description: PANEL, entry delays: { 1: 40 s }, exit time: 60 s }
      devices:
        Hatch contact: { kind: contact, wiring: radio, inputs: [contact, terminals, lid], serial: "SERIAL" }
        Door contact: { kind: contact, wiring: wired }
        Hall motion: { kind: motion, wiring: wired }
      zones:
        1: { name: Door, response: entry-exit, device: Door contact, chime: yes }
        2: { name: Hall, response: follower, device: Hall motion }
        18: { name: Hatch, response: perimeter, device: { device: Hatch contact, input: terminals } }
      users:
        1: { name: Ines, role: master }
      """;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "Marram 32, 5512 0731, defaults",
    "Samphire 128, 51 0731, defaults",
    "Samphire 128, 51 0731, unknown",
    "Tormentil 20, 51 0731, defaults",
    "Tormentil 20, 51 0731, unknown"
  })
  void threeZonesAreOrderedAndProved(String panel, String serial, String found) throws Exception {
    Path plan =
        Files.writeString(
            folder.resolve("kiosk.site.yaml"),
            THREE_ZONES.replace("PANEL", panel).replace("SERIAL", serial));
    KeyIn.Ordered ordered = ordered(plan, panel, found);
    assertThat(ordered.planned().wanted()).hasSizeGreaterThan(15);
    assertThat(ordered.order().shortness().atLeast())
        .isLessThanOrEqualTo(ordered.order().shortness().acts());
  }

  @Test
  void theBakeryGoesIntoTheLargePanelToo() throws Exception {
    Path bakery = Path.of("../demo/bakery/quayside-bakery.site.yaml");
    assertThat(ordered(bakery, "Samphire 128", "defaults").planned().wanted())
        .hasSizeGreaterThan(100);
  }

  @ParameterizedTest
  @ValueSource(strings = {"defaults", "unknown"})
  void sixtyFiveZonesAreOrderedAndProved(String found) throws Exception {
    Path clinic = Path.of("../demo/clinic/heron-lane-vets.site.yaml");
    KeyIn.Ordered ordered = ordered(clinic, "Samphire 128", found);
    assertThat(ordered.planned().wanted()).hasSizeGreaterThan(500);
  }

  @Test
  void whoStopsComesBackWithoutLeafingThroughEveryZone() throws Exception {
    Path clinic = Path.of("../demo/clinic/heron-lane-vets.site.yaml");
    KeyIn.Ordered ordered = ordered(clinic, "Samphire 128", "defaults");
    assertThat(ordered.order().groups().stream().flatMap(group -> group.stop().stream()))
        .hasSizeGreaterThan(65)
        .allSatisfy(stop -> assertThat(stop.comeBack()).hasSizeLessThanOrEqualTo(4));
  }

  private static KeyIn.Ordered ordered(Path plan, String panel, String found) throws Exception {
    Keenward keenward = new Keenward(new PanelFinder(Path.of("../panels")), "0.1.0");
    JobOptions options =
        new JobOptions(LocalDate.of(2026, 11, 25), panel, null, FoundMemory.of(found), CONSENTS);
    KeyIn keyIn = keenward.keyIn(SiteFiles.load(plan), options, Progress.SILENT);
    assertThat(keyIn).isInstanceOf(KeyIn.Ordered.class);
    KeyIn.Ordered ordered = (KeyIn.Ordered) keyIn;
    assertThat(ordered.proof().proved()).isTrue();
    return ordered;
  }
}
