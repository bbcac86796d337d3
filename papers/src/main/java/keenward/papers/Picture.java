package keenward.papers;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fits drawings onto a sheet. */
final class Picture {

  /** Most height in pixels beside heading, head and foot on the shorter of the sheets. */
  static final double MOST_HEIGHT = 800;

  private static final Pattern SIZE =
      Pattern.compile("(<svg[^>]*?) width=\"([0-9.]+)\" height=\"([0-9.]+)\"");

  private Picture() {}

  /** The drawing no higher than a sheet; a drawing states its width and height in its first tag. */
  static String fitted(String svg) {
    Matcher size = SIZE.matcher(svg);
    if (!size.find()) {
      throw new IllegalArgumentException("a drawing states its width and height");
    }
    double height = Double.parseDouble(size.group(3));
    if (height <= MOST_HEIGHT) {
      return svg;
    }
    double share = MOST_HEIGHT / height;
    long width = Math.round(Double.parseDouble(size.group(2)) * share);
    return size.replaceFirst(
        Matcher.quoteReplacement(
            size.group(1) + " width=\"" + width + "\" height=\"" + (long) MOST_HEIGHT + "\""));
  }

  static double height(String svg) {
    Matcher size = SIZE.matcher(svg);
    return size.find() ? Double.parseDouble(size.group(3)) : 0;
  }
}
