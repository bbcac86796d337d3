package keenward.core.plan;

/**
 * A place in a picture, counted from its upper left corner in its pixels, or in points of 1/72 inch
 * on a page of a PDF.
 *
 * @param right to the right
 * @param down downwards
 */
public record PicturePoint(double right, double down) {}
