package keenward.core.radio;

import java.util.List;
import keenward.core.building.RoomGeometry;
import keenward.core.plan.Point;

/**
 * Points in rows over a floor, the lowest row first.
 *
 * @param leftMetres x of the first column
 * @param bottomMetres y of the first row
 * @param stepMetres from point to point
 * @param columns how many to a row
 * @param rows how many rows
 */
public record Grid(
    double leftMetres, double bottomMetres, double stepMetres, int columns, int rows) {

  private static final int MOST_A_SIDE = 200;

  /**
   * A grid over rooms, with each point in the middle of its square.
   *
   * @param finestMetres the step, unless that would give more than 200 points a side
   */
  static Grid over(List<RoomGeometry> rooms, double finestMetres) {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (RoomGeometry room : rooms) {
      for (Point corner : room.outline()) {
        left = Math.min(left, corner.xMetres());
        right = Math.max(right, corner.xMetres());
        bottom = Math.min(bottom, corner.yMetres());
        top = Math.max(top, corner.yMetres());
      }
    }
    double step = Math.max(finestMetres, Math.max(right - left, top - bottom) / MOST_A_SIDE);
    return new Grid(
        left + step / 2,
        bottom + step / 2,
        step,
        Math.clamp((long) Math.ceil((right - left) / step), 1, MOST_A_SIDE),
        Math.clamp((long) Math.ceil((top - bottom) / step), 1, MOST_A_SIDE));
  }

  /** How many points. */
  public int size() {
    return columns * rows;
  }

  /** A point by its number, row by row. */
  public Point point(int number) {
    return new Point(x(number % columns), y(number / columns));
  }

  /** The first column at or right of x, or one past the last. */
  int columnFrom(double x) {
    return Math.clamp((long) Math.ceil((x - leftMetres) / stepMetres), 0, columns);
  }

  /** The first row at or above y, or one past the last. */
  int rowFrom(double y) {
    return Math.clamp((long) Math.ceil((y - bottomMetres) / stepMetres), 0, rows);
  }

  double x(int column) {
    return leftMetres + column * stepMetres;
  }

  double y(int row) {
    return bottomMetres + row * stepMetres;
  }
}
