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
 * @param blindMetres what is nearer to the eye than this is not seen
 */
public record SeenArea(
    Point eye, double startRadians, double spanRadians, List<Piece> edge, double blindMetres) {

  /** A full turn. */
  public static final double FULL_TURN = 2 * Math.PI;

  /** Smaller gaps between directions are rounding. */
  private static final double LEAST_GAP_RADIANS = 1e-9;

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
  public record Piece(double fromRadians, double toRadians, Point from, Point to, boolean isArc) {

    /** How much of the angle it takes. */
    public double radians() {
      return toRadians - fromRadians;
    }

    /** The parts of it that are as far from the eye as a distance, or farther. */
    public List<Piece> beyond(Point eye, double metres) {
      if (isArc) {
        return eye.distanceMetres(from) >= metres ? List.of(this) : List.of();
      }
      // Where |from + t (to - from) - eye| is the distance: a t^2 + 2 b t + c = 0.
      double alongX = to.xMetres() - from.xMetres();
      double alongY = to.yMetres() - from.yMetres();
      double offX = from.xMetres() - eye.xMetres();
      double offY = from.yMetres() - eye.yMetres();
      double a = alongX * alongX + alongY * alongY;
      double b = offX * alongX + offY * alongY;
      double c = offX * offX + offY * offY - metres * metres;
      double root = Math.sqrt(Math.max(0, b * b - a * c));
      if (root == 0) {
        return c >= 0 ? List.of(this) : List.of();
      }
      List<Piece> parts = new ArrayList<>();
      double enters = (-b - root) / a;
      double leaves = (-b + root) / a;
      if (enters > 0) {
        parts.add(part(eye, 0, Math.min(1, enters)));
      }
      if (leaves < 1) {
        parts.add(part(eye, Math.max(0, leaves), 1));
      }
      return enters >= 1 || leaves <= 0 ? List.of(this) : parts;
    }

    private Piece part(Point eye, double start, double end) {
      Point first = Polygons.along(from, to, start);
      Point last = Polygons.along(from, to, end);
      return new Piece(
          start == 0 ? fromRadians : fromRadians + turn(eye, from, first),
          end == 1 ? toRadians : fromRadians + turn(eye, from, last),
          start == 0 ? from : first,
          end == 1 ? to : last,
          false);
    }

    private static double turn(Point eye, Point one, Point other) {
      double oneX = one.xMetres() - eye.xMetres();
      double oneY = one.yMetres() - eye.yMetres();
      double otherX = other.xMetres() - eye.xMetres();
      double otherY = other.yMetres() - eye.yMetres();
      return Math.atan2(oneX * otherY - oneY * otherX, oneX * otherX + oneY * otherY);
    }
  }

  /** The same with nothing seen that is nearer than a distance. */
  public SeenArea beyond(double metres) {
    return new SeenArea(eye, startRadians, spanRadians, edge, metres);
  }

  /** The pieces of the edge that are not nearer than what is seen. */
  private List<Piece> farEdge() {
    return blindMetres == 0
        ? edge
        : edge.stream().flatMap(piece -> piece.beyond(eye, blindMetres).stream()).toList();
  }

  /** Its area: triangles to the straight pieces, sectors to the arcs, less the blind sectors. */
  public double squareMetres() {
    double doubled = 0;
    for (Piece piece : farEdge()) {
      doubled -= blindMetres * blindMetres * piece.radians();
      double fromX = piece.from().xMetres() - eye.xMetres();
      double fromY = piece.from().yMetres() - eye.yMetres();
      if (piece.isArc()) {
        doubled += (fromX * fromX + fromY * fromY) * piece.radians();
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
    return distance >= blindMetres && (distance == 0 || distance <= reachMetres(Math.atan2(y, x)));
  }

  /**
   * The outlines of its parts, not closed, with arcs as chords that stay inside their circle by at
   * most an error. There are several parts only where some of the angle is blind.
   *
   * @param errorMetres the most that a chord may lie inside its arc
   */
  public List<List<Point>> outlines(double errorMetres) {
    List<List<Point>> outlines = new ArrayList<>();
    List<Piece> part = new ArrayList<>();
    for (Piece piece : farEdge()) {
      boolean continues =
          part.isEmpty() || piece.fromRadians() - part.getLast().toRadians() < LEAST_GAP_RADIANS;
      if (!continues) {
        outlines.add(outline(part, errorMetres));
        part.clear();
      }
      part.add(piece);
    }
    if (!part.isEmpty()) {
      outlines.add(outline(part, errorMetres));
    }
    return outlines;
  }

  private List<Point> outline(List<Piece> part, double errorMetres) {
    List<Point> outline = new ArrayList<>();
    if (spanRadians < FULL_TURN && blindMetres == 0) {
      outline.add(eye);
    }
    for (Piece piece : part) {
      add(outline, piece.from());
      if (piece.isArc()) {
        addArc(
            outline,
            eye.distanceMetres(piece.from()),
            piece.fromRadians(),
            piece.toRadians(),
            errorMetres);
      }
      add(outline, piece.to());
    }
    if (blindMetres > 0) {
      double from = part.getFirst().fromRadians();
      double to = part.getLast().toRadians();
      add(outline, at(blindMetres, to));
      addArc(outline, blindMetres, to, from, errorMetres);
      add(outline, at(blindMetres, from));
    }
    if (outline.size() > 1 && outline.getFirst().equals(outline.getLast())) {
      outline.removeLast();
    }
    return outline;
  }

  /** The corners between the ends of an arc, in either direction. */
  private void addArc(
      List<Point> outline,
      double radius,
      double fromRadians,
      double toRadians,
      double errorMetres) {
    // The sagitta of a chord over the angle t is r (1 - cos(t / 2)).
    double most = 2 * Math.acos(Math.max(0, 1 - errorMetres / radius));
    int chords = (int) Math.ceil(Math.abs(toRadians - fromRadians) / most);
    for (int i = 1; i < chords; i++) {
      add(outline, at(radius, fromRadians + (toRadians - fromRadians) * i / chords));
    }
  }

  /** A place by its distance and its direction from the start of the area. */
  private Point at(double metres, double radians) {
    return new Point(
        eye.xMetres() + metres * Math.cos(startRadians + radians),
        eye.yMetres() + metres * Math.sin(startRadians + radians));
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
