package keenward.files.picture;

/**
 * A picture that is ready to be put into a page.
 *
 * @param dataUri the picture itself, without anything its maker wrote about camera and place
 * @param width width in the units in which places of it are counted: pixels as its file has them
 *     when upright, or points of 1/72 inch on a page of a PDF
 * @param height height in the same units
 */
public record Picture(String dataUri, double width, double height) {}
