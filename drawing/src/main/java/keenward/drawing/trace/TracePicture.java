package keenward.drawing.trace;

/**
 * The picture that is traced.
 *
 * @param dataUri the picture itself, as a data address
 * @param width width in the units in which its places are counted
 * @param height height in the same units
 * @param unit name of that unit: px or pt
 */
public record TracePicture(String dataUri, double width, double height, String unit) {}
