package keenward.drawing.floor;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.building.RoomGeometry;
import keenward.core.plan.DrawingUnit;
import keenward.drawing.svg.Box;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import org.jspecify.annotations.Nullable;

/**
 * Writes a room's name inside its walls: large with its area where there is room, else smaller,
 * broken into lines, or turned upright; where nothing fits, a letter that the legend explains.
 */
final class RoomNamer {

  private static final double SQUARE_METRES_A_SQUARE_FOOT = 0.09290304;
  private static final double GRID_PIXELS = 6;
  private static final int MOST_SPOTS = 900;
  private static final double STYLE_PRICE = 9;
  private static final double AVOIDED_PRICE = 30;

  private final Obstacles obstacles;
  private final Frame frame;
  private final Box area;
  private final List<Box> avoided;
  private final double size;

  private record Style(List<Words.Line> lines, boolean upright) {

    double width() {
      double along =
          lines.stream()
              .mapToDouble(line -> Lettering.width(line.text(), line.size(), line.bold()))
              .max()
              .orElse(0);
      double across = lines.stream().mapToDouble(line -> line.size() * Words.LINE_HEIGHT).sum();
      return upright ? across : along;
    }

    double height() {
      return new Style(lines, !upright).width();
    }
  }

  /** Names of a size, better not over these boxes. */
  RoomNamer(Obstacles obstacles, Frame frame, Box area, List<Box> avoided, double size) {
    this.obstacles = obstacles;
    this.frame = frame;
    this.area = area;
    this.avoided = avoided;
    this.size = size;
  }

  /**
   * The name in its place, which is then taken; empty when there is no room even for the letter.
   */
  Optional<Words> place(RoomGeometry room, DrawingUnit unit, String letter) {
    List<Spot> outline = frame.at(room.outline());
    List<Spot> spots = spots(room, outline);
    List<Style> styles = styles(room, unit, letter);
    @Nullable Words best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < styles.size(); i++) {
      double stylePrice = i * STYLE_PRICE;
      if (stylePrice >= least) {
        break;
      }
      Style style = styles.get(i);
      for (Spot spot : spots) {
        double price = stylePrice + spot.distance(spots.getFirst()) * 0.12;
        if (price >= least) {
          continue;
        }
        Box box = Box.around(spot.x(), spot.y(), style.width(), style.height());
        if (!isInside(room, outline, box) || !obstacles.isFree(box.grown(2))) {
          continue;
        }
        price += obstacles.price(box.grown(1));
        price += AVOIDED_PRICE * avoided.stream().filter(box.grown(2)::overlaps).count();
        if (price < least) {
          least = price;
          best = new Words(box, style.lines(), style.upright());
        }
      }
    }
    if (best != null) {
      obstacles.take(best.box());
    }
    return Optional.ofNullable(best);
  }

  /** Whether words are the letter that stands for a room's name. */
  static boolean isLetter(Words words, String letter) {
    return words.lines().size() == 1 && words.lines().getFirst().text().equals(letter);
  }

  private List<Style> styles(RoomGeometry room, DrawingUnit unit, String letter) {
    Words.Line areaLine =
        new Words.Line(areaText(room.areaSquareMetres(), unit), size * 0.8, false, Ink.QUIET);
    List<Style> styles = new ArrayList<>();
    for (double part : new double[] {1, 0.86, 0.74}) {
      List<Words.Line> whole = lines(List.of(room.name()), size * part);
      List<Words.Line> wrapped =
          lines(
              Lettering.wrap(room.name(), size * part, true, narrowest(room.name(), size * part)),
              size * part);
      if (part == 1) {
        styles.add(new Style(with(whole, areaLine), false));
        if (wrapped.size() > 1) {
          styles.add(new Style(with(wrapped, areaLine), false));
        }
      }
      styles.add(new Style(whole, false));
      if (wrapped.size() > 1) {
        styles.add(new Style(wrapped, false));
      }
      styles.add(new Style(whole, true));
    }
    styles.add(new Style(lines(List.of(letter), size), false));
    styles.add(new Style(lines(List.of(letter), size * 0.7), false));
    return styles;
  }

  /** A width at which words that can be broken are, about in halves. */
  private static double narrowest(String name, double size) {
    double longest = 0;
    for (String word : name.strip().split("\\s+", -1)) {
      longest = Math.max(longest, Lettering.width(word, size, true));
    }
    return Math.max(longest, Lettering.width(name, size, true) * 0.55);
  }

  private static List<Words.Line> lines(List<String> texts, double size) {
    return texts.stream().map(text -> new Words.Line(text, size, true, Ink.TEXT)).toList();
  }

  private static List<Words.Line> with(List<Words.Line> lines, Words.Line last) {
    List<Words.Line> longer = new ArrayList<>(lines);
    longer.add(last);
    return longer;
  }

  private static String areaText(double squareMetres, DrawingUnit unit) {
    return switch (unit) {
      case METRES -> rounded(squareMetres, 1) + " m²";
      case FEET -> rounded(squareMetres / SQUARE_METRES_A_SQUARE_FOOT, 0) + " ft²";
    };
  }

  private static String rounded(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  /** Spots of a grid over the room, from its centre outward. */
  private List<Spot> spots(RoomGeometry room, List<Spot> outline) {
    Spot centre = frame.at(room.centre());
    double left = outline.stream().mapToDouble(Spot::x).min().orElseThrow();
    double right = outline.stream().mapToDouble(Spot::x).max().orElseThrow();
    double top = outline.stream().mapToDouble(Spot::y).min().orElseThrow();
    double bottom = outline.stream().mapToDouble(Spot::y).max().orElseThrow();
    double grid = Math.max(GRID_PIXELS, Math.sqrt((right - left) * (bottom - top) / MOST_SPOTS));
    List<Spot> spots = new ArrayList<>(List.of(centre));
    for (double x = left + grid; x < right; x += grid) {
      for (double y = top + grid; y < bottom; y += grid) {
        spots.add(new Spot(x, y));
      }
    }
    // A sort that keeps the order of equals: the same floor is always drawn the same way.
    spots.sort(Comparator.comparingDouble(spot -> spot.distance(centre)));
    return spots;
  }

  private boolean isInside(RoomGeometry room, List<Spot> outline, Box box) {
    if (!area.holds(box) || !room.contains(frame.metres(new Spot(box.centreX(), box.centreY())))) {
      return false;
    }
    Box clear = box.grown(WallLook.OUTER.pixels(frame.scale()) / 2 + 0.5);
    for (int i = 0; i < outline.size(); i++) {
      if (Obstacles.touches(outline.get(i), outline.get((i + 1) % outline.size()), clear)) {
        return false;
      }
    }
    return true;
  }
}
