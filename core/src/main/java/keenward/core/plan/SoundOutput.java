package keenward.core.plan;

import keenward.core.quantities.Length;
import keenward.core.quantities.SoundLevel;

/**
 * How loud a sounder is, as its data sheet states it.
 *
 * @param level the level
 * @param at how far from it
 */
public record SoundOutput(Fact<SoundLevel> level, Fact<Length> at) {}
