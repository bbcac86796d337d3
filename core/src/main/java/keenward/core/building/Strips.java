package keenward.core.building;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Upright strips of the plane, each with the numbers of the edges that pass through it: a plain
 * search index.
 */
final class Strips {

  private static final int MOST_STRIPS = 1024;

  private final double left;
  private final double width;
  private final List<List<Integer>> strips = new ArrayList<>();

  /** Strips from left to right for about so many edges. */
  Strips(double left, double right, int edges) {
    int count = Math.clamp((long) (4 * Math.sqrt(edges)), 1, MOST_STRIPS);
    this.left = left;
    this.width = (right - left) / count;
    for (int i = 0; i < count; i++) {
      strips.add(new ArrayList<>());
    }
  }

  /** Adds an edge that reaches from one x to another. */
  void add(int edge, double fromX, double toX) {
    for (int i = strip(fromX); i <= strip(toX); i++) {
      strips.get(i).add(edge);
    }
  }

  /** The edges in the strip of an x, in the order added. */
  List<Integer> at(double x) {
    return strips.get(strip(x));
  }

  /** The edges in the strips from one x to another, some of them more than once. */
  IntStream between(double fromX, double toX) {
    return IntStream.rangeClosed(strip(fromX), strip(toX))
        .flatMap(i -> strips.get(i).stream().mapToInt(Integer::intValue));
  }

  private int strip(double x) {
    return width > 0 ? Math.clamp((long) ((x - left) / width), 0, strips.size() - 1) : 0;
  }
}
