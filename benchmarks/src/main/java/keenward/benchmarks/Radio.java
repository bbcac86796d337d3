package keenward.benchmarks;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import keenward.core.building.Building;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.radio.RadioAssessment;
import keenward.core.radio.RadioMap;
import keenward.files.plan.SitePlanReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A radio map of 200 x 200 points over a floor of 256 rooms and 544 walls, half with a door. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class Radio {

  private static final int ROOMS_A_SIDE = 16;
  private static final double ROOM_METRES = 40.0 / ROOMS_A_SIDE;

  private final RadioAssessment radio;

  /** Draws the floor and reckons the one link. */
  public Radio() {
    StringBuilder text =
        new StringBuilder(
            "keenward: 1\nsite: Grid\nfloors:\n  Ground:\n    wall material: brick\n    rooms:\n");
    StringBuilder doors = new StringBuilder("    openings:\n");
    for (int i = 0; i < ROOMS_A_SIDE * ROOMS_A_SIDE; i++) {
      double x = ROOM_METRES * (i % ROOMS_A_SIDE);
      int row = i / ROOMS_A_SIDE;
      double y = ROOM_METRES * row;
      text.append(
          "      R%d: { outline: [[%.4f, %.4f], [%.4f, %.4f], [%.4f, %.4f], [%.4f, %.4f]] }\n"
              .formatted(
                  i,
                  x,
                  y,
                  x + ROOM_METRES,
                  y,
                  x + ROOM_METRES,
                  y + ROOM_METRES,
                  x,
                  y + ROOM_METRES));
      if (i % ROOMS_A_SIDE > 0) {
        doors.append(
            "      D%d: { kind: door, between: [R%d, R%d], at: 1 m, width: 0.9 m }\n"
                .formatted(i, i - 1, i));
      }
    }
    text.append(doors)
        .append(
            """
            devices:
              Sender: { kind: contact, wiring: radio, room: R0, at: [1, 1], frequency: 868.3 MHz, radio power: 10 dBm }
              Receiver: { kind: receiver, wiring: bus, room: R136, at: [20.1, 20.2], frequency: 868.3 MHz, sensitivity: -105 dBm }
            zones: { 1: { name: Sender, response: instant, device: Sender } }
            """);
    SitePlan plan =
        SitePlanReader.read("grid.site.yaml", text.toString().getBytes(StandardCharsets.UTF_8))
            .plan()
            .orElseThrow();
    Building building = Building.of(plan);
    radio = RadioAssessment.of(plan, building, Settings.of(plan, Map.of()));
    RadioMap map = RadioMap.of(radio).getFirst();
    if (map.grid().size() != 40_000 || building.floors().getFirst().walls().size() != 544) {
      throw new IllegalStateException(
          map.grid().size() + " points, " + building.floors().getFirst().walls().size() + " walls");
    }
  }

  /** The map, the test which points lie in a room included. */
  @Benchmark
  public List<RadioMap> map() {
    return RadioMap.of(radio);
  }
}
