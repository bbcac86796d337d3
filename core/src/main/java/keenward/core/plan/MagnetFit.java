package keenward.core.plan;

import keenward.core.quantities.Length;

/**
 * How a contact and its magnet sit on an opening.
 *
 * @param gap gap between the two with the leaf shut
 * @param fromHinge how far along the leaf from its hinge they are; for what slides or rolls it does
 *     not matter
 */
public record MagnetFit(Fact<Length> gap, Fact<Length> fromHinge) {}
