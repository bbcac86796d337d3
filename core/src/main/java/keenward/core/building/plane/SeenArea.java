package keenward.core.building.plane;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.Point;

/**
 * What is seen from a place: all points that a straight line from it reaches without passing a
 * barrier, within a range and an angle. Its edge is kept exactly, as straight pieces and arcs round
 * the eye, in order to the left.
 *
 * @param eye where it is seen from
 * @param startRadians direction of its right edge, to the left from the x axis
 * @param spanRadians opening angle, at most a full turn
 * @param edge its edge, piece after piece, without the lines of sight between them
 */
public record SeenArea(Point eye, double startRadians, double spanRadians, List<Piece> edge) {

  /** A full turn. */
  public static final double FULL_TURN = 2 * Math.PI;

  public SeenArea {
    edge = List.copyOf(edge);
  }

  /**
   * A piece of the edge.
   *
   * @param fromRadians where it starts, counted from the start of the area
   * @param toRadians where it ends
   * @param from its first end
   * @param to its other end
   * @param isArc whether it is where the range ends, not a barrier
   */
  public record Piece(double fromRadians, double toRadians, Point from, Point to, boolean isArc) {}

  /** Its area: triangles to the straight pieces, sectors to the arcs. */
  public double squareMetres() {
    double doubled = 0;
    for (Piece piece : edge) {
      double fromX = piece.from().xMetres() - eye.xMetres();
      double fromY = piece.from().yMetres() - eye.yMetres();
      if (piece.isArc()) {
        doubled += (fromX * fromX + fromY * fromY) * (piece.toRadians() - piece.fromRadians());
      } else {
        double toX = piece.to().xMetres() - eye.xMetres();
        double toY = piece.to().yMetres() - eye.yMetres();
        doubled += fromX * toY - fromY * toX;
      }
    }
    return doubled / 2;
  }

  /** How far sight reaches in a direction; 0 outside the angle. */
  double reachMetres(double radians) {
    double turned = turned(radians - startRadians);
    if (turned > spanRadians) {
      return 0;
    }
    int low = 0;
    int high = edge.size() - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (edge.get(middle).toRadians() < turned) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    Piece piece = edge.get(low);
    double fromX = piece.from().xMetres() - eye.xMetres();
    double fromY = piece.from().yMetres() - eye.yMetres();
    if (piece.isArc()) {
      return Math.hypot(fromX, fromY);
    }
    double alongX = piece.to().xMetres() - piece.from().xMetres();
    double alongY = piece.to().yMetres() - piece.from().yMetres();
    return (fromX * alongY - fromY * alongX)
        / (Math.cos(radians) * alongY - Math.sin(radians) * alongX);
  }

  /** Whether a place is seen; undecided on the very edge. */
  public boolean sees(Point place) {
    double x = place.xMetres() - eye.xMetres();
    double y = place.yMetres() - eye.yMetres();
    double distance = Math.hypot(x, y);
    return distance == 0 || distance <= reachMetres(Math.atan2(y, x));
  }

  /**
   * Its outline, not closed, with arcs as chords that stay inside by at most an error.
   *
   * @param errorMetres the most that a chord may lie inside its arc
   */
  public List<Point> outline(double errorMetres) {
    List<Point> outline = new ArrayList<>();
    if (spanRadians < FULL_TURN) {
      outline.add(eye);
    }
    for (Piece piece : edge) {
      add(outline, piece.from());
      if (piece.isArc()) {
        addArc(outline, piece, errorMetres);
      }
      add(outline, piece.to());
    }
    if (outline.size() > 1 && outline.getFirst().equals(outline.getLast())) {
      outline.removeLast();
    }
    return outline;
  }

  private void addArc(List<Point> outline, Piece piece, double errorMetres) {
    double radius = eye.distanceMetres(piece.from());
    double angle = piece.toRadians() - piece.fromRadians();
    // The sagitta of a chord over the angle t is r (1 - cos(t / 2)).
    double most = 2 * Math.acos(Math.max(0, 1 - errorMetres / radius));
    int chords = (int) Math.ceil(angle / most);
    for (int i = 1; i < chords; i++) {
      double direction = startRadians + piece.fromRadians() + angle * i / chords;
      add(
          outline,
          new Point(
              eye.xMetres() + radius * Math.cos(direction),
              eye.yMetres() + radius * Math.sin(direction)));
    }
  }

  private static void add(List<Point> outline, Point point) {
    if (outline.isEmpty() || !outline.getLast().equals(point)) {
      outline.add(point);
    }
  }

  /** An angle from 0 up to a full turn. */
  static double turned(double radians) {
    double turned = radians % FULL_TURN;
    double positive = turned < 0 ? turned + FULL_TURN : turned;
    return positive >= FULL_TURN ? 0 : positive;
  }
}
