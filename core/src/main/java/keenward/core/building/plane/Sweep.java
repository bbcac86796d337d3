package keenward.core.building.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import keenward.core.plan.Point;
import org.jspecify.annotations.Nullable;

/**
 * A ray that turns to the left round an eye and keeps the barriers it crosses in the order in which
 * it meets them; the first one bounds what is seen. Since no two barriers cross, their order can
 * change only where one begins or ends, so n barriers take O(n log n) comparisons.
 *
 * <p>After the plane sweep of Asano (1985) and Suri and O'Rourke (1986), with the range and the
 * opening angle clipped in the same pass.
 */
public final class Sweep {

  /** Turns smaller than this are rounding, not gaps. */
  private static final double LEAST_TURN = 1e-12;

  private final Point eye;
  private final double range;
  private final double start;
  private final double span;
  private final List<SeenArea.Piece> edge = new ArrayList<>();
  private Span[] active = new Span[16];
  private int count;

  private Sweep(Point eye, double range, double start, double span) {
    this.eye = eye;
    this.range = range;
    this.start = start;
    this.span = span;
  }

  /**
   * What is seen from a place.
   *
   * @param eye the place; on a barrier it sees the side to the left of the barrier or the right
   *     one, undecided which, so stand clear
   * @param rangeMetres how far sight reaches at most
   * @param startRadians where the angle begins, to the left from the x axis
   * @param spanRadians how wide it is; a full turn or more means all round
   */
  public static SeenArea from(
      Point eye, double rangeMetres, double startRadians, double spanRadians, Barriers barriers) {
    double span = Math.min(spanRadians, SeenArea.FULL_TURN);
    Sweep sweep = new Sweep(eye, rangeMetres, startRadians, span);
    sweep.turn(sweep.spans(barriers.near(eye, rangeMetres)));
    return new SeenArea(eye, startRadians, span, sweep.edge, 0);
  }

  /** A barrier between two directions, both counted from the start of the sweep. */
  private static final class Span {
    final double from;
    final double to;
    final double fromX;
    final double fromY;
    final double toX;
    final double toY;
    final double x;
    final double y;
    final double alongX;
    final double alongY;

    /** The part between two directions of the barrier from (x, y) along (alongX, alongY). */
    Span(
        double from,
        double to,
        double fromX,
        double fromY,
        double toX,
        double toY,
        double x,
        double y,
        double alongX,
        double alongY) {
      this.from = from;
      this.to = to;
      double fromLength = Math.hypot(fromX, fromY);
      this.fromX = fromX / fromLength;
      this.fromY = fromY / fromLength;
      double toLength = Math.hypot(toX, toY);
      this.toX = toX / toLength;
      this.toY = toY / toLength;
      this.x = x;
      this.y = y;
      this.alongX = alongX;
      this.alongY = alongY;
    }

    /** How far it is in a direction, in lengths of the direction's vector. */
    double distance(double directionX, double directionY) {
      return (x * alongY - y * alongX) / (directionX * alongY - directionY * alongX);
    }

    /**
     * Whether it is nearer than one that began before it, judged half way along what both cover.
     */
    boolean isNearerThan(Span earlier) {
      boolean endsFirst = to < earlier.to;
      double middleX = fromX + (endsFirst ? toX : earlier.toX);
      double middleY = fromY + (endsFirst ? toY : earlier.toY);
      return distance(middleX, middleY) < earlier.distance(middleX, middleY);
    }
  }

  private List<Span> spans(List<Barrier> barriers) {
    List<Span> spans = new ArrayList<>();
    for (Barrier barrier : barriers) {
      double ax = barrier.from().xMetres() - eye.xMetres();
      double ay = barrier.from().yMetres() - eye.yMetres();
      double bx = barrier.to().xMetres() - eye.xMetres();
      double by = barrier.to().yMetres() - eye.yMetres();
      double turn = ax * by - ay * bx;
      if (turn < 0) {
        double x = ax;
        double y = ay;
        ax = bx;
        ay = by;
        bx = x;
        by = y;
      }
      if (turn != 0 && !isBeyondRange(ax, ay, bx, by)) {
        add(spans, ax, ay, bx, by);
      }
    }
    return spans;
  }

  private boolean isBeyondRange(double ax, double ay, double bx, double by) {
    double alongX = bx - ax;
    double alongY = by - ay;
    double nearest =
        Math.clamp(-(ax * alongX + ay * alongY) / (alongX * alongX + alongY * alongY), 0.0, 1.0);
    return Math.hypot(ax + nearest * alongX, ay + nearest * alongY) >= range;
  }

  private void add(List<Span> spans, double ax, double ay, double bx, double by) {
    double from = SeenArea.turned(Math.atan2(ay, ax) - start);
    double to = SeenArea.turned(Math.atan2(by, bx) - start);
    if (to > from) {
      clip(spans, from, to, ax, ay, bx, by);
    } else if (to < from) {
      // It passes the direction where the sweep starts, and so counts at both ends.
      clip(spans, from, SeenArea.FULL_TURN, ax, ay, bx, by);
      clip(spans, 0, to, ax, ay, bx, by);
    }
  }

  private void clip(
      List<Span> spans, double from, double to, double ax, double ay, double bx, double by) {
    double end = Math.min(to, span);
    if (end - from <= LEAST_TURN) {
      return;
    }
    boolean startsLate = from == 0;
    boolean endsEarly = end < to || to == SeenArea.FULL_TURN;
    spans.add(
        new Span(
            from,
            end,
            startsLate ? Math.cos(start) : ax,
            startsLate ? Math.sin(start) : ay,
            endsEarly ? Math.cos(start + end) : bx,
            endsEarly ? Math.sin(start + end) : by,
            ax,
            ay,
            bx - ax,
            by - ay));
  }

  private void turn(List<Span> spans) {
    Span[] byStart = spans.toArray(new Span[0]);
    Arrays.sort(byStart, Comparator.comparingDouble(each -> each.from));
    Span[] byEnd = byStart.clone();
    Arrays.sort(byEnd, Comparator.comparingDouble(each -> each.to));
    double done = 0;
    @Nullable Span front = null;
    int begun = 0;
    int ended = 0;
    while (ended < byEnd.length) {
      boolean ends = begun == byStart.length || byEnd[ended].to <= byStart[begun].from;
      double direction = ends ? byEnd[ended].to : byStart[begun].from;
      if (ends) {
        remove(byEnd[ended++]);
      } else {
        insert(byStart[begun++]);
      }
      Span first = count == 0 ? null : active[0];
      if (first != front) {
        if (direction - done > LEAST_TURN) {
          show(front, done, direction);
          done = direction;
        }
        front = first;
      }
    }
    if (span - done > LEAST_TURN) {
      show(front, done, span);
    }
  }

  private void insert(Span added) {
    int low = 0;
    int high = count;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (added.isNearerThan(active[middle])) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    if (count == active.length) {
      active = Arrays.copyOf(active, 2 * count);
    }
    System.arraycopy(active, low, active, low + 1, count - low);
    active[low] = added;
    count++;
  }

  private void remove(Span ended) {
    int at = 0;
    while (active[at] != ended) {
      at++;
    }
    System.arraycopy(active, at + 1, active, at, count - at - 1);
    count--;
  }

  /** Adds to the edge what bounds sight between two directions, cut where it passes the range. */
  private void show(@Nullable Span front, double from, double to) {
    if (front == null) {
      arc(from, to);
      return;
    }
    // The foot of the perpendicular, and how far to each side of it the range reaches.
    double length = Math.hypot(front.alongX, front.alongY);
    double away = (front.x * front.alongY - front.y * front.alongX) / length;
    if (away >= range) {
      arc(from, to);
      return;
    }
    double foot = SeenArea.turned(Math.atan2(-front.alongX * away, front.alongY * away) - start);
    double aside = Math.acos(away / range);
    double middle = (from + to) / 2;
    // The foot may lie past the start of the sweep: take the turn nearest to this piece.
    foot += SeenArea.FULL_TURN * Math.rint((middle - foot) / SeenArea.FULL_TURN);
    double near = Math.clamp(foot - aside, from, to);
    double far = Math.clamp(foot + aside, from, to);
    if (near - from > LEAST_TURN) {
      arc(from, near);
    } else {
      near = from;
    }
    if (to - far <= LEAST_TURN) {
      far = to;
    }
    if (far > near) {
      edge.add(new SeenArea.Piece(near, far, onBarrier(front, near), onBarrier(front, far), false));
    }
    if (to > far) {
      arc(Math.max(far, near), to);
    }
  }

  private Point onBarrier(Span barrier, double direction) {
    double x = Math.cos(start + direction);
    double y = Math.sin(start + direction);
    double distance = Math.min(barrier.distance(x, y), range);
    return new Point(eye.xMetres() + x * distance, eye.yMetres() + y * distance);
  }

  private void arc(double from, double to) {
    edge.add(new SeenArea.Piece(from, to, onRange(from), onRange(to), true));
  }

  private Point onRange(double direction) {
    return new Point(
        eye.xMetres() + range * Math.cos(start + direction),
        eye.yMetres() + range * Math.sin(start + direction));
  }
}
