package keenward.drawing.timeline;

import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;

/**
 * How a timeline is drawn.
 *
 * @param title heading, also for people who do not see the drawing
 * @param widthPixels its width
 * @param palette where colours come from
 * @param idPrefix what every element id starts with
 * @param faces font family
 */
public record TimelineOptions(
    String title, double widthPixels, Palette palette, String idPrefix, String faces) {

  public TimelineOptions {
    if (!(widthPixels >= 280 && widthPixels <= 10_000)) {
      throw new IllegalArgumentException("width of a drawing from 280 to 10000 px: " + widthPixels);
    }
  }

  /** For a page on a desk: 760 px, colours of the page. */
  public static TimelineOptions desk(String title) {
    return new TimelineOptions(title, 760, Palette.PAGE, "", Lettering.FACES);
  }

  /** For a page on a phone: 360 px, colours of the page. */
  public static TimelineOptions phone(String title) {
    return new TimelineOptions(title, 360, Palette.PAGE, "", Lettering.FACES);
  }

  /** For paper: 680 px, plain colours. */
  public static TimelineOptions paper(String title) {
    return new TimelineOptions(title, 680, Palette.PRINT, "", Lettering.FACES);
  }
}
