package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import keenward.drawing.svg.Box;

/**
 * What is in the way of symbols and words: boxes that are taken, and lines better left clear, at a
 * price each.
 */
final class Obstacles {

  private static final double CELL = 48;

  private record Cell(long column, long row) {}

  private record Line(Spot from, Spot to, double half, double price) {}

  private final Map<Cell, List<Box>> taken = new HashMap<>();
  private final Map<Cell, List<Line>> lines = new HashMap<>();

  void take(Box box) {
    cells(box, (cell, ignored) -> taken.computeIfAbsent(cell, key -> new ArrayList<>()).add(box));
  }

  /** A line of some thickness that costs so much to cover. */
  void line(Spot from, Spot to, double thickness, double price) {
    Line line = new Line(from, to, thickness / 2, price);
    Box bounds =
        new Box(
                Math.min(from.x(), to.x()),
                Math.min(from.y(), to.y()),
                Math.abs(from.x() - to.x()),
                Math.abs(from.y() - to.y()))
            .grown(thickness / 2);
    cells(
        bounds,
        (cell, box) -> {
          if (touches(line, box)) {
            lines.computeIfAbsent(cell, key -> new ArrayList<>()).add(line);
          }
        });
  }

  void outline(List<Spot> corners, double thickness, double price) {
    Spot previous = corners.getLast();
    for (Spot corner : corners) {
      line(previous, corner, thickness, price);
      previous = corner;
    }
  }

  boolean isFree(Box box) {
    boolean[] free = {true};
    cells(
        box,
        (cell, ignored) -> {
          for (Box other : taken.getOrDefault(cell, List.of())) {
            free[0] &= !other.overlaps(box);
          }
        });
    return free[0];
  }

  /** The price of all lines that a box covers. */
  double price(Box box) {
    Set<Line> covered = new LinkedHashSet<>();
    cells(
        box,
        (cell, ignored) -> {
          for (Line line : lines.getOrDefault(cell, List.of())) {
            if (touches(line, box)) {
              covered.add(line);
            }
          }
        });
    return covered.stream().mapToDouble(Line::price).sum();
  }

  private static boolean touches(Line line, Box box) {
    return touches(line.from(), line.to(), box.grown(line.half()));
  }

  /** Whether a line has a point within a box (Liang and Barsky's clipping). */
  static boolean touches(Spot from, Spot to, Box box) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double[] slopes = {-dx, dx, -dy, dy};
    double[] gaps = {
      from.x() - box.x(), box.right() - from.x(), from.y() - box.y(), box.bottom() - from.y()
    };
    double enters = 0;
    double leaves = 1;
    for (int side = 0; side < 4; side++) {
      if (slopes[side] == 0) {
        if (gaps[side] < 0) {
          return false;
        }
      } else if (slopes[side] < 0) {
        enters = Math.max(enters, gaps[side] / slopes[side]);
      } else {
        leaves = Math.min(leaves, gaps[side] / slopes[side]);
      }
    }
    return enters <= leaves;
  }

  private static void cells(Box box, BiConsumer<Cell, Box> action) {
    for (long column = (long) Math.floor(box.x() / CELL); column * CELL <= box.right(); column++) {
      for (long row = (long) Math.floor(box.y() / CELL); row * CELL <= box.bottom(); row++) {
        action.accept(new Cell(column, row), new Box(column * CELL, row * CELL, CELL, CELL));
      }
    }
  }
}
