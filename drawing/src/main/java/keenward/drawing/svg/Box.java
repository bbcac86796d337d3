package keenward.drawing.svg;

/**
 * An upright rectangle in pixels.
 *
 * @param x left edge
 * @param y top edge
 * @param width width
 * @param height height
 */
public record Box(double x, double y, double width, double height) {

  /** A box round a centre. */
  public static Box around(double centreX, double centreY, double width, double height) {
    return new Box(centreX - width / 2, centreY - height / 2, width, height);
  }

  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  public double centreX() {
    return x + width / 2;
  }

  public double centreY() {
    return y + height / 2;
  }

  /** Whether the two share more than an edge. */
  public boolean overlaps(Box other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  /** Whether the other lies within, edges included. */
  public boolean holds(Box other) {
    return x <= other.x && y <= other.y && right() >= other.right() && bottom() >= other.bottom();
  }

  /** The box with a margin on every side; a negative one shrinks it. */
  public Box grown(double margin) {
    return new Box(x - margin, y - margin, width + 2 * margin, height + 2 * margin);
  }
}
