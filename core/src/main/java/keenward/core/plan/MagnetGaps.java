package keenward.core.plan;

import keenward.core.quantities.Length;

/**
 * The gaps between contact and magnet that a data sheet states, on wood or plastic.
 *
 * @param working the widest gap at which it closes
 * @param release the gap beyond which it is open
 */
public record MagnetGaps(Fact<Length> working, Fact<Length> release) {}
