package keenward.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import keenward.core.building.Building;
import keenward.core.building.placing.DetectorPlacer;
import keenward.core.building.placing.Suggestion;
import keenward.core.building.placing.Wish;
import keenward.core.building.walking.Place;
import keenward.core.building.walking.WalkingMap;
import keenward.core.building.walking.WalkingRoute;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.SitePlan;
import keenward.core.progress.Progress;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFiles;
import keenward.usecases.suggest.ProgrammeChooser;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The clinic of the demo: its walks from doors to keypads, and a suggestion from nothing. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class Clinic {

  private static final Path SITE = Path.of("demo/clinic/heron-lane-vets.site.yaml");

  private final List<Place> doors = new ArrayList<>();
  private final List<Place> keypads = new ArrayList<>();
  private final SitePlan plan;
  private final Building building;

  /** Reads the plan; started from the repository's folder. */
  public Clinic() {
    try {
      plan = SiteFiles.load(SITE).plan();
    } catch (BadInput wrong) {
      throw new IllegalStateException("start from the repository's folder", wrong);
    }
    building = Building.of(plan);
    WalkingMap map = WalkingMap.of(plan, building);
    plan.openings()
        .filter(opening -> opening.isOutside() && opening.kind().isForWalking())
        .forEach(opening -> map.place(opening).ifPresent(doors::add));
    plan.devicesOf(DeviceKind.KEYPAD).forEach(keypad -> map.place(keypad).ifPresent(keypads::add));
  }

  /** Every walk from a door to outside to a keypad, both floors prepared anew. */
  @Benchmark
  public double walksFromDoorsToKeypads() {
    WalkingMap map = WalkingMap.of(plan, building);
    double metres = 0;
    for (Place door : doors) {
      for (Place keypad : keypads) {
        metres += map.search(door, keypad).find().map(WalkingRoute::metres).orElse(0.0);
      }
    }
    return metres;
  }

  /** The fewest detectors, the plan's own left aside. */
  @Benchmark
  public Suggestion suggestion() {
    return DetectorPlacer.propose(
        plan,
        building,
        new Wish(0.85, 1, List.of(), List.of(), true),
        new ProgrammeChooser(),
        Progress.SILENT);
  }
}
