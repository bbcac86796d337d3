package keenward.core.radio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.MissingFact;
import keenward.core.radio.RadioBuilding.Piece;

/**
 * A building at one frequency. Walls are held as columns of numbers.
 *
 * <p>The places that a wall hides from an aerial are a convex piece of the plane: the wedge from
 * the aerial over the two ends of the wall, beyond the wall and, where the way rises or falls past
 * its edge, up to where it does. On a row of a grid that is one interval, found from four straight
 * lines; a map costs rows times walls, not points times walls.
 */
final class RadioField {

  private final RadioBuilding building;
  private final double megahertz;
  private final Obstacle floor;
  private final List<Optional<Obstacle>> obstacles;
  private final double[] fromX;
  private final double[] fromY;
  private final double[] toX;
  private final double[] toY;
  private final double[] decibels;

  RadioField(RadioBuilding building, double megahertz) {
    this.building = building;
    this.megahertz = megahertz;
    this.floor = Obstacle.floor(building.premises(), megahertz);
    int count = building.pieces().size();
    this.obstacles = new ArrayList<>(count);
    this.fromX = new double[count];
    this.fromY = new double[count];
    this.toX = new double[count];
    this.toY = new double[count];
    this.decibels = new double[count];
    for (int i = 0; i < count; i++) {
      Piece piece = building.pieces().get(i);
      Optional<Obstacle> obstacle =
          piece.material().map(material -> Obstacle.of(material, megahertz));
      obstacles.add(obstacle);
      fromX[i] = piece.from().xMetres();
      fromY[i] = piece.from().yMetres();
      toX[i] = piece.to().xMetres();
      toY[i] = piece.to().yMetres();
      decibels[i] = obstacle.map(Obstacle::decibels).orElse(Double.NaN);
    }
  }

  /** The straight way between two places. */
  RadioPath path(Spot from, Spot to) {
    List<RadioPath.Crossed> crossed = new ArrayList<>();
    Optional<MissingFact> open = Optional.empty();
    Shadow shadow = new Shadow();
    for (int i = 0; i < decibels.length; i++) {
      if (shadow.cast(i, from, to.zMetres()) && shadow.hides(to)) {
        Piece piece = building.pieces().get(i);
        if (obstacles.get(i).isPresent()) {
          crossed.add(new RadioPath.Crossed(piece.what(), obstacles.get(i).get()));
        } else {
          open = Optional.of(piece.missing());
        }
      }
    }
    int floors = Math.abs(from.storey() - to.storey());
    for (int i = 0; i < floors; i++) {
      crossed.add(new RadioPath.Crossed("floor", floor));
    }
    return new RadioPath(
        megahertz, Math.max(RadioPath.LEAST_METRES, from.metresTo(to)), crossed, floors, open);
  }

  /**
   * Loss from a place to every point of a grid on one storey, in decibels; not a number where a
   * wall of unknown material is in the way.
   *
   * @param like a place on the storey and at the height of the points
   * @param fit what the house was measured to do
   */
  double[] losses(Spot from, Spot like, Grid grid, Fit fit) {
    double[] added = new double[grid.rows() * (grid.columns() + 1)];
    int[] unknown = new int[added.length];
    Shadow shadow = new Shadow();
    for (int i = 0; i < decibels.length; i++) {
      if (!shadow.cast(i, from, like.zMetres())) {
        continue;
      }
      for (int row = 0; row < grid.rows(); row++) {
        int first = shadow.firstColumn(grid, row);
        int end = shadow.endColumn();
        if (first < end) {
          int start = row * (grid.columns() + 1);
          if (Double.isNaN(decibels[i])) {
            unknown[start + first]++;
            unknown[start + end]--;
          } else {
            added[start + first] += decibels[i];
            added[start + end] -= decibels[i];
          }
        }
      }
    }
    return summed(from, like, grid, fit, added, unknown);
  }

  private double[] summed(Spot from, Spot like, Grid grid, Fit fit, double[] added, int[] unknown) {
    double floors = Math.abs(from.storey() - like.storey()) * floor.decibels();
    double rise = like.zMetres() - from.zMetres();
    double atOneMetre = FreeSpace.lossDecibels(megahertz, 1);
    double least = RadioPath.LEAST_METRES * RadioPath.LEAST_METRES;
    double[] losses = new double[grid.size()];
    for (int row = 0; row < grid.rows(); row++) {
      double wall = 0;
      int hidden = 0;
      double dy = grid.y(row) - from.yMetres();
      for (int column = 0; column < grid.columns(); column++) {
        int at = row * (grid.columns() + 1) + column;
        wall += added[at];
        hidden += unknown[at];
        double dx = grid.x(column) - from.xMetres();
        double square = Math.max(least, dx * dx + dy * dy + rise * rise);
        losses[row * grid.columns() + column] =
            hidden > 0
                ? Double.NaN
                : atOneMetre
                    + 10 * Math.log10(square)
                    + fit.wallScale() * (wall + floors)
                    - fit.offsetDecibels();
      }
    }
    return losses;
  }

  /** What one piece hides from one place: where four straight lines are at or above zero. */
  private final class Shadow {
    private static final int LINES = 4;

    /**
     * A way through the edge that two pieces share meets one of them; a wall does not hide itself.
     */
    private static final double EDGE = 1e-9;

    private final double[] alongX = new double[LINES];
    private final double[] alongY = new double[LINES];
    private final double[] constant = new double[LINES];
    private int endColumn;

    /** Whether it hides anything; points are all at one height. */
    boolean cast(int i, Spot from, double toZ) {
      double ax = fromX[i] - from.xMetres();
      double ay = fromY[i] - from.yMetres();
      double bx = toX[i] - from.xMetres();
      double by = toY[i] - from.yMetres();
      double wide = ax * by - ay * bx;
      if (wide == 0) {
        return false;
      }
      if (wide < 0) {
        double x = ax;
        double y = ay;
        ax = bx;
        ay = by;
        bx = x;
        by = y;
        wide = -wide;
      }
      // How far along the way it may be met: where the way is between its foot and its top.
      double least = 0;
      double most = 1;
      Piece piece = building.pieces().get(i);
      double rise = toZ - from.zMetres();
      if (rise == 0) {
        if (toZ < piece.lowMetres() || toZ > piece.highMetres()) {
          return false;
        }
      } else {
        double foot = (piece.lowMetres() - from.zMetres()) / rise;
        double top = (piece.highMetres() - from.zMetres()) / rise;
        least = Math.max(least, Math.min(foot, top));
        most = Math.min(most, Math.max(foot, top));
        if (least >= most) {
          return false;
        }
      }
      // A point p, seen from the place, is met at wide / (p x (b - a)) of its way.
      line(0, -ay, ax, 0);
      line(1, by, -bx, -EDGE);
      line(2, by - ay, ax - bx, -wide / most - EDGE);
      if (least > 0) {
        line(3, ay - by, bx - ax, wide / least);
      } else {
        line(3, 0, 0, 0);
      }
      for (int k = 0; k < LINES; k++) {
        constant[k] -= alongX[k] * from.xMetres() + alongY[k] * from.yMetres();
      }
      return true;
    }

    private void line(int k, double x, double y, double constantTerm) {
      alongX[k] = x;
      alongY[k] = y;
      constant[k] = constantTerm;
    }

    boolean hides(Spot to) {
      for (int k = 0; k < LINES; k++) {
        if (alongX[k] * to.xMetres() + alongY[k] * to.yMetres() + constant[k] < 0) {
          return false;
        }
      }
      return true;
    }

    /** The first hidden point of a row; {@link #endColumn} is the first that is free again. */
    int firstColumn(Grid grid, int row) {
      double least = 0;
      double most = grid.columns() - 1.0;
      double y = grid.y(row);
      for (int k = 0; k < LINES; k++) {
        double atFirst = alongX[k] * grid.leftMetres() + alongY[k] * y + constant[k];
        double aColumn = alongX[k] * grid.stepMetres();
        if (aColumn > 0) {
          least = Math.max(least, -atFirst / aColumn);
        } else if (aColumn < 0) {
          most = Math.min(most, -atFirst / aColumn);
        } else if (atFirst < 0) {
          most = -1;
        }
      }
      int first = (int) Math.ceil(least);
      endColumn = Math.max(first, (int) Math.floor(most) + 1);
      return first;
    }

    int endColumn() {
      return endColumn;
    }
  }
}
