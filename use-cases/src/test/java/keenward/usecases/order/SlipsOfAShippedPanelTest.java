package keenward.usecases.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.replay.Slips;
import keenward.core.progress.Progress;
import keenward.usecases.job.JobOptions;
import keenward.usecases.job.Keenward;
import keenward.usecases.panel.PanelFinder;
import keenward.usecases.site.SiteFiles;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each panel that ships, keyed in by hands that slip. */
class SlipsOfAShippedPanelTest {

  private static final String PLAN =
      """
      keenward: 1
      site: Hilltop Kiosk
      panel: { description: PANEL }
      devices:
        Hatch contact: { kind: contact, wiring: radio, inputs: [contact, terminals, lid], serial: "SERIAL" }
        Door contact: { kind: contact, wiring: wired }
      zones:
        1: { name: Door, response: entry-exit, device: Door contact, chime: yes }
        HATCH: { name: Hatch, response: perimeter, device: { device: Hatch contact, input: terminals } }
      users:
        1: { name: Ines, role: master }
      """;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"Marram 32, 5512 0731, 2", "Samphire 128, 51 0731, 17", "Tormentil 20, 51 0731, 2"})
  void everyKeyDroppedDoubledOrSwappedIsHarmlessOrRefuted(String panel, String serial, String hatch)
      throws Exception {
    String plan = PLAN.replace("PANEL", panel).replace("SERIAL", serial).replace("HATCH", hatch);
    var site = SiteFiles.load(Files.writeString(folder.resolve("kiosk.site.yaml"), plan));
    Keenward keenward = new Keenward(new PanelFinder(Path.of("../panels")), "0.1.0");
    KeyIn keyIn = keenward.keyIn(site, JobOptions.on(LocalDate.of(2026, 11, 25)), Progress.SILENT);
    assertThat(keyIn).isInstanceOf(KeyIn.Ordered.class);
    KeyIn.Ordered ordered = (KeyIn.Ordered) keyIn;
    Interpreter interpreter = new Interpreter(ordered.description());
    Memory found = interpreter.layout().initial();
    Map<Slot, Value> wanted = new LinkedHashMap<>();
    ordered
        .planned()
        .wanted()
        .forEach((slot, value) -> wanted.put(slot, value.over(found.get(slot))));

    List<Slips.Slip> slips = Slips.of(interpreter, found, ordered.order(), wanted, Progress.SILENT);

    assertThat(slips)
        .extracting(Slips.Slip::kind)
        .contains(Slips.Kind.LEFT_OUT, Slips.Kind.PRESSED_TWICE, Slips.Kind.EXCHANGED);
    assertThat(slips).hasSizeGreaterThan(2 * ordered.order().effort().keys());
    // A slip that shows at once stops the technician there; one that shows only in the end is
    // refuted by the replay.
    long shown = slips.stream().filter(slip -> slip.outcome() == Slips.Outcome.SHOWN).count();
    assertThat(shown).isGreaterThan(slips.size() / 2);
  }
}
