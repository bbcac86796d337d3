package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.electrical.outage.Outage;
import keenward.core.electrical.outage.OutageEvent;
import keenward.core.electrical.outage.Outages;
import keenward.core.plan.Cable;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Length;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/methods/battery.md are what the program computes. */
class BatteryMethodTest {
  private static final Path PAGE = Path.of("..", "docs", "methods", "battery.md");

  @Test
  void thePublishedExampleIsTheOneOnThePage() throws IOException {
    BatteryNeed need =
        BatteryNeed.of(
            new BatteryDuty("", 24, 5, 1.2, Optional.empty(), ""),
            Explained.known("Load at rest", "", 420, "mA", ""),
            Explained.known("Load in alarm", "", 3800, "mA", ""),
            Explained.known("Temperature factor", "", 1, "", ""),
            Explained.known("Age allowance", "", 1.2, "", ""));
    assertThat(need.lines().stream().map(BatteryMethodTest::withoutSource))
        .containsExactlyElementsOf(example(0));
  }

  @Test
  void theWholeSupplyIsTheOneOnThePage() throws IOException {
    PowerAssessment power =
        PowerAssessment.of(
            PlanBuilder.site()
                .grade(Standard.EN50131, 2)
                .supply(
                    "Main",
                    main ->
                        main.voltage("13.6 V")
                            .rating("600 mA")
                            .own("100 mA", "150 mA")
                            .charge("400 mA")
                            .battery("7 Ah")
                            .lowestTemperature("10 C"))
                .device(
                    "Motion", DeviceKind.MOTION, motion -> motion.wired().draws("12 mA", "18 mA"))
                .device("Keypad", DeviceKind.KEYPAD, keypad -> keypad.bus().draws("40 mA", "90 mA"))
                .cable(
                    new Cable(
                        "C1",
                        "Main",
                        "Motion",
                        Fact.of(Length.parse("20 m").find().orElseThrow()),
                        Fact.of(Conductor.parse("0.22 mm2").find().orElseThrow()),
                        Fact.missing()))
                .build());
    List<Explained> lines = new ArrayList<>(power.supplies().getFirst().lines());
    for (CableRun run : power.cableRuns()) {
      lines.addAll(run.lines());
      lines.add(run.volts());
    }
    assertThat(lines.stream().map(BatteryMethodTest::withoutSource))
        .containsExactlyElementsOf(example(1));
  }

  @Test
  void theOutageIsTheOneOnThePage() throws IOException {
    SitePlan plan =
        PlanBuilder.site()
            .grade(Standard.EN50131, 2)
            .panel(panel -> panel.sounderTime("10 min"))
            .supply(
                "Main",
                main ->
                    main.voltage("13.6 V")
                        .own("100 mA", "150 mA")
                        .battery("7 Ah")
                        .batteries(2)
                        .alike(true)
                        .lowestTemperature("10 C"))
            .device(
                "Siren",
                DeviceKind.SIREN,
                siren -> siren.wired().draws("20 mA", "350 mA").worksFrom("10.8 V"))
            .build();
    Outage outage =
        Outages.of(plan, Settings.of(plan, Map.of()), PowerAssessment.of(plan))
            .outages()
            .getFirst();
    List<String> lines =
        new ArrayList<>(List.of(withoutSource(outage.available()), withoutSource(outage.cutOff())));
    for (OutageEvent event : outage.events()) {
      String working = event.line().working();
      lines.add(
          event.when()
              + ": "
              + event.line().name()
              + (working.isEmpty() ? "" : " (" + working + ")"));
    }
    assertThat(lines).containsExactlyElementsOf(example(2));
  }

  private static String withoutSource(Explained line) {
    return new Explained(
            line.name(), line.working(), line.value(), line.unit(), line.certainty(), "")
        .text();
  }

  /** The lines of a block of text on the page, counted from 0. */
  private static List<String> example(int number) throws IOException {
    List<List<String>> blocks = new ArrayList<>();
    boolean inside = false;
    for (String line : Files.readAllLines(PAGE)) {
      if (line.equals("```text")) {
        blocks.add(new ArrayList<>());
        inside = true;
      } else if (line.equals("```")) {
        inside = false;
      } else if (inside) {
        blocks.getLast().add(line);
      }
    }
    return blocks.get(number);
  }
}
