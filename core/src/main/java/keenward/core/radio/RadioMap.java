package keenward.core.radio;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.plan.Device;
import keenward.core.plan.Point;
import keenward.core.radio.RadioAssessment.Station;

/**
 * Margin over a floor: what a device at a point would have to the receiver or repeater that hears
 * it best, were it as weak as the weakest sender of the plan. The model is the refitted one where
 * there are enough measurements.
 */
public final class RadioMap {

  private static final double FINEST_METRES = 0.2;
  private static final double PLACING_METRES = 0.5;

  private final FloorGeometry floor;
  private final Grid grid;
  private final double[] margins;
  private final Device weakest;
  private final double reserveDecibels;

  private RadioMap(
      FloorGeometry floor, Grid grid, double[] margins, Device weakest, double reserveDecibels) {
    this.floor = floor;
    this.grid = grid;
    this.margins = margins;
    this.weakest = weakest;
    this.reserveDecibels = reserveDecibels;
  }

  /** The maps of all drawn floors; none without a sender and a receiver that are known. */
  public static List<RadioMap> of(RadioAssessment radio) {
    List<RadioMap> maps = new ArrayList<>();
    Optional<Station> weakest =
        radio.sensors().stream().min(Comparator.comparingDouble(Station::level));
    if (weakest.isEmpty() || radio.receivers().isEmpty()) {
      return maps;
    }
    double reserve =
        new Shadowing(SiteGeneral.of(radio.building().premises()).sigmaDecibels())
            .reserveDecibels();
    for (FloorGeometry floor : radio.building().building().floors()) {
      if (!floor.rooms().isEmpty()) {
        Grid grid = Grid.over(floor.rooms(), FINEST_METRES);
        maps.add(
            new RadioMap(
                floor,
                grid,
                margins(radio, floor, grid, weakest.get()),
                weakest.get().device(),
                reserve));
      }
    }
    return maps;
  }

  private static double[] margins(
      RadioAssessment radio, FloorGeometry floor, Grid grid, Station weakest) {
    double[] best = new double[grid.size()];
    Arrays.fill(best, Double.NaN);
    for (Map.Entry<Station, Double> each : radio.onward().entrySet()) {
      Station listener = each.getKey();
      if (!listener.hears(weakest)) {
        continue;
      }
      double[] losses = losses(radio, listener, floor, grid);
      for (int i = 0; i < best.length; i++) {
        double margin = Math.min(each.getValue(), weakest.level() - losses[i] - listener.level());
        // Anything is more than nothing known.
        if (Double.isNaN(best[i]) || margin > best[i]) {
          best[i] = margin;
        }
      }
    }
    keepRooms(floor, grid, best);
    return best;
  }

  private static double[] losses(
      RadioAssessment radio, Station from, FloorGeometry floor, Grid grid) {
    Spot like =
        radio
            .building()
            .spot(floor.name(), grid.point(0), RadioBuilding.USUAL_HEIGHT_METRES)
            .orElseThrow();
    return radio.building().at(from.megahertz()).losses(from.spot(), like, grid, radio.fitOrNone());
  }

  /** Each room asks only the points in the box round it. */
  private static void keepRooms(FloorGeometry floor, Grid grid, double[] values) {
    boolean[] inside = new boolean[values.length];
    for (RoomGeometry room : floor.rooms()) {
      double left = room.outline().stream().mapToDouble(Point::xMetres).min().orElseThrow();
      double right = room.outline().stream().mapToDouble(Point::xMetres).max().orElseThrow();
      double low = room.outline().stream().mapToDouble(Point::yMetres).min().orElseThrow();
      double high = room.outline().stream().mapToDouble(Point::yMetres).max().orElseThrow();
      for (int row = grid.rowFrom(low); row < grid.rowFrom(high); row++) {
        for (int column = grid.columnFrom(left); column < grid.columnFrom(right); column++) {
          int number = row * grid.columns() + column;
          inside[number] |= room.contains(grid.point(number));
        }
      }
    }
    for (int i = 0; i < values.length; i++) {
      if (!inside[i]) {
        values[i] = Double.NaN;
      }
    }
  }

  /**
   * The best place for a receiver or repeater.
   *
   * @param floor name of its floor
   * @param room name of its room
   * @param at where in it
   * @param leastMarginDecibels margin of the sender that it hears worst
   * @param worst that sender
   */
  public record BestPlace(
      String floor, String room, Point at, double leastMarginDecibels, Device worst) {}

  /**
   * Where one receiver, as good as the first of the plan, would hear the worst of all senders best;
   * on a grid of half a metre over all rooms. Empty without a sender and a receiver that are known.
   */
  public static Optional<BestPlace> bestReceiver(RadioAssessment radio) {
    return radio.receivers().stream()
        .findFirst()
        .flatMap(receiver ->
            best(
                radio,
                radio.sensors().stream().filter(receiver::hears).toList(),
                receiver.level(),
                Optional.empty()));
  }

  /**
   * Where a repeater would help the senders most whose route lacks its reserve. The repeater hears
   * as the first receiver does and sends as the weakest sender. Empty when none needs help.
   */
  public static Optional<BestPlace> bestRepeater(RadioAssessment radio) {
    List<Device> weak =
        radio.routes().stream().filter(route -> !route.isEnough()).map(RadioRoute::sender).toList();
    OptionalDouble power = radio.sensors().stream().mapToDouble(Station::level).min();
    return power.isEmpty()
        ? Optional.empty()
        : radio.receivers().stream()
            .findFirst()
            .flatMap(receiver ->
                best(
                    radio,
                    radio.sensors().stream()
                        .filter(each -> weak.contains(each.device()) && receiver.hears(each))
                        .toList(),
                    receiver.level(),
                    Optional.of(
                        new Station(
                            receiver.device(),
                            receiver.spot(),
                            receiver.megahertz(),
                            power.getAsDouble()))));
  }

  /** Losses are the same both ways, so that each sender needs one map. */
  private static Optional<BestPlace> best(
      RadioAssessment radio,
      List<Station> senders,
      double sensitivity,
      Optional<Station> onwardTo) {
    Optional<BestPlace> best = Optional.empty();
    if (senders.isEmpty()) {
      return best;
    }
    for (FloorGeometry floor : radio.building().building().floors()) {
      if (floor.rooms().isEmpty()) {
        continue;
      }
      Grid grid = Grid.over(floor.rooms(), PLACING_METRES);
      double[] least = new double[grid.size()];
      Arrays.fill(least, Double.POSITIVE_INFINITY);
      int[] worst = new int[grid.size()];
      for (int number = 0; number < senders.size(); number++) {
        Station sender = senders.get(number);
        double[] losses = losses(radio, sender, floor, grid);
        for (int i = 0; i < least.length; i++) {
          double margin = sender.level() - losses[i] - sensitivity;
          if (Double.isNaN(margin) || margin < least[i]) {
            least[i] = margin;
            worst[i] = number;
          }
        }
      }
      if (onwardTo.isPresent()) {
        double[] losses = losses(radio, onwardTo.get(), floor, grid);
        for (int i = 0; i < least.length; i++) {
          least[i] = Math.min(least[i], onwardTo.get().level() - losses[i] - sensitivity);
        }
      }
      best = better(best, floor, grid, least, worst, senders);
    }
    return best;
  }

  private static Optional<BestPlace> better(
      Optional<BestPlace> before,
      FloorGeometry floor,
      Grid grid,
      double[] least,
      int[] worst,
      List<Station> senders) {
    Optional<BestPlace> best = before;
    for (int i = 0; i < least.length; i++) {
      double margin = least[i];
      boolean isBetter =
          best.map(place -> margin > place.leastMarginDecibels()).orElse(!Double.isNaN(margin));
      if (!isBetter) {
        continue;
      }
      Optional<RoomGeometry> room = floor.findRoomAt(grid.point(i));
      if (room.isPresent()) {
        best =
            Optional.of(
                new BestPlace(
                    floor.name(),
                    room.get().name(),
                    grid.point(i),
                    margin,
                    senders.get(worst[i]).device()));
      }
    }
    return best;
  }

  /** The floor. */
  public FloorGeometry floor() {
    return floor;
  }

  /** The points. */
  public Grid grid() {
    return grid;
  }

  /** The sender of the plan whose power is reckoned with. */
  public Device weakest() {
    return weakest;
  }

  /** What a margin keeps in hand so that it holds in 99 % of places. */
  public double reserveDecibels() {
    return reserveDecibels;
  }

  /** Margin at a point of the grid; empty outside the rooms and where a wall is not known. */
  public OptionalDouble marginDecibels(int point) {
    return Double.isNaN(margins[point])
        ? OptionalDouble.empty()
        : OptionalDouble.of(margins[point]);
  }
}
