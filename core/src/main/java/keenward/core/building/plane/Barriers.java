package keenward.core.building.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import keenward.core.plan.Point;

/**
 * The barriers of one floor, cut where they cross so that no two cross any more, in a grid of
 * square cells that finds those near a place.
 */
public final class Barriers {

  private static final int MOST_CELLS_A_SIDE = 512;

  private final List<Barrier> pieces;
  private final double left;
  private final double bottom;
  private final double cell;
  private final int columns;
  private final int rows;
  private final int[][] cells;

  private Barriers(List<Barrier> pieces) {
    this.pieces = pieces;
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (Barrier piece : pieces) {
      least = Math.min(least, Math.min(piece.from().xMetres(), piece.to().xMetres()));
      most = Math.max(most, Math.max(piece.from().xMetres(), piece.to().xMetres()));
      lowest = Math.min(lowest, Math.min(piece.from().yMetres(), piece.to().yMetres()));
      highest = Math.max(highest, Math.max(piece.from().yMetres(), piece.to().yMetres()));
    }
    int aSide = Math.clamp((long) Math.sqrt(pieces.size()), 1, MOST_CELLS_A_SIDE);
    this.left = pieces.isEmpty() ? 0 : least;
    this.bottom = pieces.isEmpty() ? 0 : lowest;
    double extent = pieces.isEmpty() ? 0 : Math.max(most - least, highest - lowest);
    this.cell = extent > 0 ? extent / aSide : 1;
    this.columns = aSide;
    this.rows = aSide;
    this.cells = fill();
  }

  /** Barriers that may cross one another; pieces without length are left out. */
  public static Barriers of(List<Barrier> barriers) {
    List<Barrier> pieces =
        barriers.stream().filter(each -> !each.from().equals(each.to())).toList();
    return new Barriers(List.copyOf(new Barriers(pieces).cut()));
  }

  /** How many pieces there are after cutting. */
  public int count() {
    return pieces.size();
  }

  /** The pieces in a cell that a square round a place touches, each once. */
  List<Barrier> near(Point place, double metres) {
    List<Barrier> found = new ArrayList<>();
    int firstColumn = column(place.xMetres() - metres);
    int firstRow = row(place.yMetres() - metres);
    int lastColumn = column(place.xMetres() + metres);
    int lastRow = row(place.yMetres() + metres);
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        for (int number : cells[row * columns + column]) {
          Barrier piece = pieces.get(number);
          // A piece stands in every cell of its box; it is taken from the first one asked for.
          if (row == Math.max(firstRow, lowRow(piece))
              && column == Math.max(firstColumn, lowColumn(piece))) {
            found.add(piece);
          }
        }
      }
    }
    return found;
  }

  private List<Barrier> cut() {
    List<Barrier> all = new ArrayList<>();
    for (Barrier piece : pieces) {
      List<Double> cuts = new ArrayList<>();
      Point a = piece.from();
      Point b = piece.to();
      Point middle = new Point((a.xMetres() + b.xMetres()) / 2, (a.yMetres() + b.yMetres()) / 2);
      double reach =
          Math.max(Math.abs(a.xMetres() - b.xMetres()), Math.abs(a.yMetres() - b.yMetres())) / 2;
      for (Barrier other : near(middle, reach)) {
        double fromC = turn(a, b, other.from());
        double fromD = turn(a, b, other.to());
        double fromA = turn(other.from(), other.to(), a);
        double fromB = turn(other.from(), other.to(), b);
        if (fromC * fromD < 0 && fromA * fromB < 0) {
          cuts.add(fromA / (fromA - fromB));
        }
      }
      cuts.sort(null);
      Point start = a;
      for (double cut : cuts) {
        Point end =
            new Point(
                a.xMetres() + (b.xMetres() - a.xMetres()) * cut,
                a.yMetres() + (b.yMetres() - a.yMetres()) * cut);
        all.add(new Barrier(start, end));
        start = end;
      }
      all.add(new Barrier(start, b));
    }
    return all.stream().filter(each -> !each.from().equals(each.to())).toList();
  }

  private static double turn(Point a, Point b, Point c) {
    return (b.xMetres() - a.xMetres()) * (c.yMetres() - a.yMetres())
        - (b.yMetres() - a.yMetres()) * (c.xMetres() - a.xMetres());
  }

  private int[][] fill() {
    int[] counts = new int[columns * rows];
    forEachCell((cellNumber, piece) -> counts[cellNumber]++);
    int[][] filled = new int[columns * rows][];
    Arrays.setAll(filled, i -> new int[counts[i]]);
    Arrays.fill(counts, 0);
    forEachCell((cellNumber, piece) -> filled[cellNumber][counts[cellNumber]++] = piece);
    return filled;
  }

  private void forEachCell(CellVisitor visitor) {
    for (int number = 0; number < pieces.size(); number++) {
      Barrier piece = pieces.get(number);
      int lastColumn = column(Math.max(piece.from().xMetres(), piece.to().xMetres()));
      int lastRow = row(Math.max(piece.from().yMetres(), piece.to().yMetres()));
      for (int row = lowRow(piece); row <= lastRow; row++) {
        for (int column = lowColumn(piece); column <= lastColumn; column++) {
          visitor.visit(row * columns + column, number);
        }
      }
    }
  }

  private interface CellVisitor {
    void visit(int cellNumber, int piece);
  }

  private int lowColumn(Barrier piece) {
    return column(Math.min(piece.from().xMetres(), piece.to().xMetres()));
  }

  private int lowRow(Barrier piece) {
    return row(Math.min(piece.from().yMetres(), piece.to().yMetres()));
  }

  private int column(double x) {
    return Math.clamp((long) Math.floor((x - left) / cell), 0, columns - 1);
  }

  private int row(double y) {
    return Math.clamp((long) Math.floor((y - bottom) / cell), 0, rows - 1);
  }
}
