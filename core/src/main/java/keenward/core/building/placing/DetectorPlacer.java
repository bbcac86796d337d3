package keenward.core.building.placing;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import keenward.core.building.Building;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.coverage.RoomCoverage;
import keenward.core.plan.Coverage;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DeviceType;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Opening;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.Room;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneResponse;
import keenward.core.progress.Progress;
import keenward.core.quantities.Angle;

/**
 * Proposes motion detectors: the fewest, among the places looked at, that see the wanted share of
 * every wanted room. The floor is counted in squares; what the chosen ones see is then computed
 * exactly, and a room that comes out short is asked for a little more.
 */
public final class DetectorPlacer {

  /** A room is counted in about so many squares, of at least 0.1 and at most 0.5 m. */
  private static final double SQUARES_A_ROOM = 600;

  /** In a hall so large that this is passed, squares grow. */
  private static final double MOST_SQUARES = 10_000;

  private static final double LEAST_STEP_METRES = 0.1;
  private static final double MOST_STEP_METRES = 0.5;

  /** How often a room that comes out short of the wish in exact numbers is asked for more. */
  private static final int MOST_ROUNDS = 12;

  private final SitePlan plan;
  private final Building building;
  private final Wish wish;
  private final CoverChooser chooser;
  private final Progress progress;
  private final List<MissingFact> notAssessed = new ArrayList<>();

  private DetectorPlacer(
      SitePlan plan, Building building, Wish wish, CoverChooser chooser, Progress progress) {
    this.plan = plan;
    this.building = building;
    this.wish = wish;
    this.chooser = chooser;
    this.progress = progress;
  }

  /**
   * The proposal.
   *
   * @param chooser solves the choice
   * @param progress told after each part of a floor
   */
  public static Suggestion propose(
      SitePlan plan, Building building, Wish wish, CoverChooser chooser, Progress progress) {
    return new DetectorPlacer(plan, building, wish, chooser, progress).propose();
  }

  private Suggestion propose() {
    SitePlan start = wish.isAfresh() ? PlanChange.withoutMotion(plan) : plan;
    DetectorViews kept = DetectorViews.of(start, building);
    List<DeviceType> types = types();
    List<Part> parts = new ArrayList<>();
    for (FloorGeometry floor : types.isEmpty() ? List.<FloorGeometry>of() : building.floors()) {
      parts.addAll(
          Part.of(
              floor,
              floor.rooms().stream().filter(room -> isWanted(floor.floor(), room.room())).toList(),
              types,
              kept.views().stream().filter(view -> view.floor().equals(floor.name())).toList(),
              progress));
    }
    noteRoomsNotDrawn();
    Map<String, Double> more = new HashMap<>();
    Map<String, Counted> counted = new LinkedHashMap<>();
    List<CoverChooser.Choice> choices = new ArrayList<>();
    parts.forEach(part -> choices.add(part.choose(wish, more, chooser, progress, counted)));
    // What more is asked for later makes up for the squares, and proves nothing.
    int atLeast = choices.stream().mapToInt(CoverChooser.Choice::atLeast).sum();
    Suggestion suggestion = result(start, kept, parts, choices, counted, atLeast);
    for (int round = 1; round < MOST_ROUNDS; round++) {
      Set<String> asked = askForMore(suggestion, more);
      if (asked.isEmpty()) {
        break;
      }
      for (int i = 0; i < parts.size(); i++) {
        if (parts.get(i).rooms().stream().map(RoomGeometry::name).anyMatch(asked::contains)) {
          choices.set(i, parts.get(i).choose(wish, more, chooser, progress, counted));
        }
      }
      suggestion = result(start, kept, parts, choices, counted, atLeast);
    }
    return suggestion;
  }

  private void noteRoomsNotDrawn() {
    for (Floor floor : plan.floors()) {
      for (Room room : floor.rooms()) {
        if (isWanted(floor, room) && building.findRoom(room.name()).isEmpty()) {
          notAssessed.add(
              new MissingFact(
                  PlanPath.of("floors", floor.name(), "rooms", room.name()),
                  "where detectors could go in '" + room.name() + "', which has no sound outline",
                  "outline: [[0, 0], [4, 0], [4, 3], [0, 3]]"));
        }
      }
    }
  }

  /** The rooms that came out short in exact numbers, though there are places for more. */
  private Set<String> askForMore(Suggestion suggestion, Map<String, Double> more) {
    Set<String> asked = new HashSet<>();
    for (Suggestion.RoomResult room : suggestion.rooms()) {
      double lacking = wish.share() - room.after();
      double before = more.getOrDefault(room.room(), 0.0);
      double then = Math.min(before + lacking + 0.002, room.most() - wish.share());
      if (lacking > 1e-9 && then > before) {
        more.put(room.room(), then);
        asked.add(room.room());
      }
    }
    return asked;
  }

  /** How a room was counted in squares. */
  record Counted(double most, int candidates) {}

  private Suggestion result(
      SitePlan start,
      DetectorViews kept,
      List<Part> parts,
      List<CoverChooser.Choice> choices,
      Map<String, Counted> counted,
      int atLeast) {
    List<Candidate> chosen = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      List<Candidate> candidates = parts.get(i).candidates();
      choices.get(i).chosen().forEach(index -> chosen.add(candidates.get(index)));
    }
    List<Device> devices = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    start.devices().forEach(device -> taken.add(device.name()));
    for (Candidate candidate : chosen) {
      devices.add(device(candidate, taken));
    }
    SitePlan after = PlanChange.with(start, devices, ZoneResponse.INSTANT);
    Building built = Building.of(after);
    CoverageMap before = CoverageMap.of(building, kept);
    CoverageMap coverage = CoverageMap.of(after, built);
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < chosen.size(); i++) {
      placements.add(
          new Placement(devices.get(i), chosen.get(i), chosen.get(i).seen().squareMetres()));
    }
    List<Suggestion.RoomResult> rooms = new ArrayList<>();
    counted.forEach((room, count) ->
        rooms.add(
            new Suggestion.RoomResult(
                room,
                share(before, room),
                share(coverage, room),
                count.most(),
                count.candidates())));
    List<MissingFact> open = new ArrayList<>(notAssessed);
    open.addAll(kept.notAssessed());
    return new Suggestion(
        wish,
        placements,
        Math.min(atLeast, placements.size()),
        kept.views().size(),
        rooms,
        after,
        built,
        coverage,
        open);
  }

  private double share(CoverageMap map, String name) {
    return map.floors().stream()
        .flatMap(floor -> floor.rooms().stream())
        .filter(room -> room.room().equals(name))
        .findFirst()
        .map(this::share)
        .orElse(0.0);
  }

  private double share(RoomCoverage room) {
    if (room.floorSquareMetres() == 0) {
      return 0;
    }
    return wish.times() == 1
        ? room.share()
        : Math.min(1, room.seenTwiceSquareMetres() / room.floorSquareMetres());
  }

  private static Device device(Candidate candidate, Set<String> taken) {
    String base = candidate.room() + " motion";
    String name = base;
    for (int number = 2; !taken.add(name); number++) {
      name = base + " " + number;
    }
    return new Device(
        name,
        Fact.of(candidate.type().name()),
        candidate.type().traits(),
        Fact.of(candidate.room()),
        Fact.missing(),
        Fact.of(candidate.at()),
        Fact.missing(),
        candidate.bearingDegrees().isPresent() ? Fact.of(Candidates.HEIGHT) : Fact.missing(),
        candidate
            .bearingDegrees()
            .map(degrees -> Fact.of(new Angle(degrees, Math.round(degrees) + " deg")))
            .orElse(Fact.missing()),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing());
  }

  private List<DeviceType> types() {
    List<DeviceType> types =
        plan.types().stream()
            .filter(type -> wish.types().isEmpty() || wish.types().contains(type.name()))
            .filter(DetectorPlacer::seesPeople)
            .toList();
    if (types.isEmpty()) {
      notAssessed.add(
          new MissingFact(
              PlanPath.of("types"),
              "where detectors could go, since no type of motion detector says what it sees",
              "types: { corner motion: { kind: motion, coverage: { pattern: fan, range: 12 m, angle: 90 deg } } }"));
    }
    return types;
  }

  private static boolean seesPeople(DeviceType type) {
    DeviceKind kind = type.traits().kind().orNull();
    Optional<Coverage> coverage = type.traits().coverage().find();
    boolean isMotion = kind == DeviceKind.MOTION || kind == DeviceKind.DUAL_MOTION;
    boolean seesFar =
        coverage.flatMap(Coverage::rangeMetres).filter(metres -> metres > 0).isPresent();
    if (!isMotion || coverage.isEmpty() || !seesFar) {
      return false;
    }
    return switch (coverage.get().shape()) {
      case CEILING -> true;
      case FAN ->
          coverage
              .get()
              .angle()
              .map(Angle::degrees)
              .find()
              .filter(degrees -> degrees > 0)
              .isPresent();
      default -> false;
    };
  }

  private boolean isWanted(Floor floor, Room room) {
    if (!wish.rooms().isEmpty()) {
      return wish.rooms().contains(room.name());
    }
    RoomUse use = room.use().orNull();
    boolean isWay = use == RoomUse.HALL || use == RoomUse.LANDING || use == RoomUse.STAIRS;
    boolean isLowest = floor.equals(plan.floors().getFirst());
    return isWay
        || room.target().orElse(false)
        || floor.openings().stream().anyMatch(opening -> isWayIn(opening, room, isLowest));
  }

  private static boolean isWayIn(Opening opening, Room room, boolean isLowest) {
    return opening.isReachable(isLowest)
        && opening.place().room().equals(room.name())
        && !opening.excluded().isGiven();
  }

  /**
   * Rooms of one floor that are solved together, since a detector may see into several of them.
   *
   * @param rooms the rooms
   * @param candidates the places in them
   * @param squares their floor in squares
   */
  private record Part(List<RoomGeometry> rooms, List<Candidate> candidates, List<Square> squares) {

    /** A square of floor, by the index of its room among those of its part. */
    private record Square(int room, double squareMetres, int already, List<Integer> seenBy) {}

    static List<Part> of(
        FloorGeometry floor,
        List<RoomGeometry> rooms,
        List<DeviceType> types,
        List<DetectorView> kept,
        Progress progress) {
      progress.check("looking for places on '" + floor.name() + "'", 0, rooms.size());
      List<Candidate> candidates = Candidates.in(floor, rooms, types);
      int[] group = new int[rooms.size()];
      List<List<Square>> seen = new ArrayList<>();
      for (int room = 0; room < rooms.size(); room++) {
        group[room] = room;
      }
      for (int room = 0; room < rooms.size(); room++) {
        progress.check("looking for places on '" + floor.name() + "'", room, rooms.size());
        List<Square> here = new ArrayList<>();
        double step = step(rooms.get(room).areaSquareMetres());
        for (Point square : squares(floor, rooms.get(room), step)) {
          List<Integer> seenBy = new ArrayList<>();
          for (int i = 0; i < candidates.size(); i++) {
            if (candidates.get(i).seen().sees(square)) {
              seenBy.add(i);
              join(group, room, indexOf(rooms, candidates.get(i).room()));
            }
          }
          int already = (int) kept.stream().filter(view -> view.seen().sees(square)).count();
          here.add(new Square(room, step * step, already, seenBy));
        }
        seen.add(here);
      }
      return split(rooms, candidates, seen, group);
    }

    private static List<Part> split(
        List<RoomGeometry> rooms,
        List<Candidate> candidates,
        List<List<Square>> seen,
        int[] group) {
      List<Part> parts = new ArrayList<>();
      for (int lead = 0; lead < rooms.size(); lead++) {
        if (group[lead] != lead) {
          continue;
        }
        List<RoomGeometry> here = new ArrayList<>();
        List<Candidate> places = new ArrayList<>();
        List<Square> squares = new ArrayList<>();
        Map<Integer, Integer> indexOf = new TreeMap<>();
        for (int i = 0; i < candidates.size(); i++) {
          if (group[indexOf(rooms, candidates.get(i).room())] == lead) {
            indexOf.put(i, places.size());
            places.add(candidates.get(i));
          }
        }
        for (int room = 0; room < rooms.size(); room++) {
          if (group[room] == lead) {
            int number = here.size();
            here.add(rooms.get(room));
            for (Square square : seen.get(room)) {
              squares.add(
                  new Square(
                      number,
                      square.squareMetres(),
                      square.already(),
                      square.seenBy().stream().map(indexOf::get).toList()));
            }
          }
        }
        parts.add(new Part(here, places, squares));
      }
      return parts;
    }

    private static void join(int[] group, int one, int other) {
      int from = Math.max(group[one], group[other]);
      int to = Math.min(group[one], group[other]);
      if (from != to) {
        for (int i = 0; i < group.length; i++) {
          if (group[i] == from) {
            group[i] = to;
          }
        }
      }
    }

    private static int indexOf(List<RoomGeometry> rooms, String name) {
      for (int i = 0; i < rooms.size(); i++) {
        if (rooms.get(i).name().equals(name)) {
          return i;
        }
      }
      throw new IllegalStateException("a candidate stands in a room that was looked at");
    }

    private static double step(double roomSquareMetres) {
      double usual =
          Math.clamp(
              Math.sqrt(roomSquareMetres / SQUARES_A_ROOM), LEAST_STEP_METRES, MOST_STEP_METRES);
      return Math.max(usual, Math.sqrt(roomSquareMetres / MOST_SQUARES));
    }

    /** The middles of the squares on which somebody can stand. */
    private static List<Point> squares(FloorGeometry floor, RoomGeometry room, double step) {
      List<Point> squares = new ArrayList<>();
      for (Point middle : Spots.Box.of(room.outline()).grid(step / 2, step)) {
        if (room.contains(middle) && !Spots.isInFurniture(floor, middle)) {
          squares.add(middle);
        }
      }
      return squares;
    }

    CoverChooser.Choice choose(
        Wish wish,
        Map<String, Double> more,
        CoverChooser chooser,
        Progress progress,
        Map<String, Counted> counted) {
      progress.check("choosing for '" + rooms.getFirst().name() + "'", 0, 0);
      List<Integer> kept = undominated(wish.times());
      Map<Integer, Integer> indexOf = new HashMap<>();
      kept.forEach(index -> indexOf.put(index, indexOf.size()));
      Map<List<Object>, CoverProblem.Patch> patches = new LinkedHashMap<>();
      for (Square each : squares) {
        List<Integer> seenBy =
            each.seenBy().stream().filter(indexOf::containsKey).map(indexOf::get).toList();
        patches.merge(
            List.of(each.room(), each.already(), seenBy),
            new CoverProblem.Patch(each.room(), each.squareMetres(), each.already(), seenBy),
            (one, other) ->
                new CoverProblem.Patch(
                    one.room(),
                    one.squareMetres() + other.squareMetres(),
                    one.already(),
                    one.seenBy()));
      }
      List<Double> needs = new ArrayList<>();
      for (int room = 0; room < rooms.size(); room++) {
        needs.add(need(room, wish, more, counted));
      }
      CoverChooser.Choice choice =
          chooser.choose(
              new CoverProblem(
                  kept.stream().map(index -> candidates.get(index).misfit()).toList(),
                  List.copyOf(patches.values()),
                  needs,
                  wish.times()),
              progress);
      return new CoverChooser.Choice(
          choice.chosen().stream().map(kept::get).toList(), choice.atLeast());
    }

    private double need(
        int room, Wish wish, Map<String, Double> more, Map<String, Counted> counted) {
      double whole = 0;
      double most = 0;
      for (Square each : squares) {
        if (each.room() == room) {
          whole += each.squareMetres();
          most += each.already() + each.seenBy().size() >= wish.times() ? each.squareMetres() : 0;
        }
      }
      String name = rooms.get(room).name();
      long places = candidates.stream().filter(each -> each.room().equals(name)).count();
      counted.put(name, new Counted(whole == 0 ? 0 : most / whole, (int) places));
      return Math.min(
          most - 1e-9, Math.min(1, wish.share() + more.getOrDefault(name, 0.0)) * whole);
    }

    /**
     * Candidates that are of use: whatever one sees that as many others as are wanted see as well,
     * and fit as well, is never needed.
     */
    private List<Integer> undominated(int times) {
      List<BitSet> seen = new ArrayList<>();
      List<Integer> bySize = new ArrayList<>();
      for (int i = 0; i < candidates.size(); i++) {
        seen.add(new BitSet(squares.size()));
        bySize.add(i);
      }
      for (int square = 0; square < squares.size(); square++) {
        if (squares.get(square).already() < times) {
          for (int candidate : squares.get(square).seenBy()) {
            seen.get(candidate).set(square);
          }
        }
      }
      bySize.sort(
          Comparator.<Integer>comparingInt(index -> -seen.get(index).cardinality())
              .thenComparingDouble(index -> candidates.get(index).misfit())
              .thenComparingInt(index -> index));
      List<Integer> kept = new ArrayList<>();
      for (int index : bySize) {
        long better =
            kept.stream()
                .filter(other -> candidates.get(other).misfit() <= candidates.get(index).misfit())
                .filter(other -> contains(seen.get(other), seen.get(index)))
                .limit(times)
                .count();
        if (better < times) {
          kept.add(index);
        }
      }
      kept.sort(null);
      return kept;
    }

    private static boolean contains(BitSet all, BitSet part) {
      BitSet rest = (BitSet) part.clone();
      rest.andNot(all);
      return rest.isEmpty();
    }
  }
}
