package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.rules.Severity;
import keenward.drawing.svg.Box;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import org.jspecify.annotations.Nullable;

/**
 * Puts small labels beside what they belong to: touching it where there is room, else a little off
 * with a thin line.
 */
final class ChipPlacer {

  private static final double OTHER_ROOM_PRICE = 30;
  private static final double LEADER_PRICE = 14;

  /** Words that would have to cover a wall are left out. */
  private static final double MOST_FOR_WORDS = FloorLayout.WALL_PRICE / 2;

  private static final double FARTHEST_PIXELS = 120;

  private final Obstacles obstacles;
  private final Frame frame;
  private final FloorGeometry floor;
  private final Box area;
  private final double size;

  private record Candidate(Box box, double price, boolean apart) {}

  ChipPlacer(Obstacles obstacles, Frame frame, FloorGeometry floor, Box area, double size) {
    this.obstacles = obstacles;
    this.frame = frame;
    this.floor = floor;
    this.area = area;
    this.size = size;
  }

  /** The label in its place, which is then taken; empty when there is no room for it. */
  Optional<Chip> place(String owner, String text, Box anchor, Optional<Severity> severity) {
    double width = Lettering.width(text, size, true) + (severity.isPresent() ? 14 : 6);
    return cheapest(anchor, width, size + 3.5, OTHER_ROOM_PRICE)
        .map(best -> {
          obstacles.take(best.box());
          Optional<Spot> leader =
              best.apart()
                  ? Optional.of(new Spot(anchor.centreX(), anchor.centreY()))
                  : Optional.empty();
          return new Chip(owner, text, best.box(), leader, severity);
        });
  }

  /** Plain words that touch what they belong to, in a line or several, in the same room. */
  Optional<Words> placeWords(String text, Box anchor) {
    double small = size * 0.9;
    double whole = Lettering.width(text, small, false);
    for (double room : new double[] {whole, whole * 0.7, whole * 0.5}) {
      List<String> texts = Lettering.wrap(text, small, false, room);
      double width =
          texts.stream().mapToDouble(each -> Lettering.width(each, small, false)).max().orElse(0);
      double height = texts.size() * small * Words.LINE_HEIGHT;
      Optional<Candidate> place =
          cheapest(anchor, width, height, Double.POSITIVE_INFINITY)
              .filter(best -> !best.apart() && best.price() < MOST_FOR_WORDS);
      if (place.isPresent()) {
        obstacles.take(place.get().box());
        List<Words.Line> lines =
            texts.stream().map(each -> new Words.Line(each, small, false, Ink.QUIET)).toList();
        return Optional.of(new Words(place.get().box(), lines, false));
      }
    }
    return Optional.empty();
  }

  private Optional<Candidate> cheapest(
      Box anchor, double width, double height, double otherRoomPrice) {
    Optional<String> room = roomAt(anchor);
    @Nullable Candidate best = null;
    for (Candidate candidate : candidates(anchor, width, height)) {
      double most = best == null ? Double.POSITIVE_INFINITY : best.price();
      if (candidate.price() >= most
          || !area.holds(candidate.box())
          || !obstacles.isFree(candidate.box().grown(0.5))) {
        continue;
      }
      double price = candidate.price() + obstacles.price(candidate.box());
      if (!roomAt(candidate.box()).equals(room)) {
        price += otherRoomPrice;
      }
      if (price < most) {
        best = new Candidate(candidate.box(), price, candidate.apart());
      }
    }
    return Optional.ofNullable(best);
  }

  private Optional<String> roomAt(Box box) {
    return floor
        .findRoomAt(frame.metres(new Spot(box.centreX(), box.centreY())))
        .map(RoomGeometry::name);
  }

  private static List<Candidate> candidates(Box anchor, double width, double height) {
    List<Candidate> candidates = new ArrayList<>();
    double dx = anchor.width() / 2 + width / 2 + 1;
    double dy = anchor.height() / 2 + height / 2 + 0.5;
    double[][] sides = {
      {dx, 0}, {-dx, 0}, {0, dy}, {0, -dy},
      {dx, dy * 0.6}, {dx, -dy * 0.6}, {-dx, dy * 0.6}, {-dx, -dy * 0.6},
      {dx * 0.7, dy}, {-dx * 0.7, dy}, {dx * 0.7, -dy}, {-dx * 0.7, -dy}
    };
    for (int i = 0; i < sides.length; i++) {
      Box box =
          Box.around(anchor.centreX() + sides[i][0], anchor.centreY() + sides[i][1], width, height);
      candidates.add(new Candidate(box, i * 0.6, false));
    }
    for (double ring = dx + 6; ring <= FARTHEST_PIXELS; ring += 4) {
      for (int i = 0; i < 16; i++) {
        double angle = 2 * Math.PI * i / 16;
        Box box =
            Box.around(
                anchor.centreX() + ring * Math.cos(angle),
                anchor.centreY() + ring * Math.sin(angle),
                width,
                height);
        candidates.add(new Candidate(box, LEADER_PRICE + ring * 0.5, true));
      }
    }
    return candidates;
  }
}
