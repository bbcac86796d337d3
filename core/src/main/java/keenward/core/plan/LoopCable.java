package keenward.core.plan;

import keenward.core.quantities.Conductor;
import keenward.core.quantities.Length;

/**
 * The two cores from the panel to the far end of a zone's loop.
 *
 * @param length length one way
 * @param conductor size of each core
 */
public record LoopCable(Fact<Length> length, Fact<Conductor> conductor) {}
