package keenward.drawing.load;

import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;

/**
 * How loads are drawn.
 *
 * @param widthPixels its width
 * @param palette where colours come from
 * @param idPrefix what every element id starts with
 * @param faces font family
 */
public record LoadOptions(double widthPixels, Palette palette, String idPrefix, String faces) {

  public LoadOptions {
    if (!(widthPixels >= 280 && widthPixels <= 10_000)) {
      throw new IllegalArgumentException("width of a drawing from 280 to 10000 px: " + widthPixels);
    }
  }

  /** For a page on a desk: 560 px, colours of the page. */
  public static LoadOptions desk() {
    return new LoadOptions(560, Palette.PAGE, "", Lettering.FACES);
  }

  /** For the whole width of a page on a desk: 1100 px, colours of the page. */
  public static LoadOptions wide() {
    return new LoadOptions(1100, Palette.PAGE, "", Lettering.FACES);
  }

  /** The same with another start of element ids, for several drawings on one page. */
  public LoadOptions idPrefix(String prefix) {
    return new LoadOptions(widthPixels, palette, prefix, faces);
  }

  /** For a page on a phone: 360 px, colours of the page. */
  public static LoadOptions phone() {
    return new LoadOptions(360, Palette.PAGE, "", Lettering.FACES);
  }

  /** For paper: 680 px, plain colours. */
  public static LoadOptions paper() {
    return new LoadOptions(680, Palette.PRINT, "", Lettering.FACES);
  }
}
