package keenward.drawing.floor;

import java.util.List;
import keenward.drawing.svg.Box;
import keenward.drawing.svg.Ink;

/**
 * Words that have their place.
 *
 * @param box what they cover
 * @param lines lines from top to bottom
 * @param upright whether they are turned to read from bottom to top
 */
record Words(Box box, List<Line> lines, boolean upright) {

  /** Height of a line in font sizes. */
  static final double LINE_HEIGHT = 1.22;

  /**
   * A line.
   *
   * @param text the text
   * @param size font size in pixels
   * @param bold whether it is bold
   * @param ink its colour
   */
  record Line(String text, double size, boolean bold, Ink ink) {}
}
