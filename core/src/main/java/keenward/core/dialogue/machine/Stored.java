package keenward.core.dialogue.machine;

import keenward.core.dialogue.description.Value;

/**
 * A value that was stored.
 *
 * @param slot where
 * @param before what it held before
 * @param after what it holds now
 * @param sideEffect whether it came along with something else rather than being entered
 */
public record Stored(Slot slot, Value before, Value after, boolean sideEffect) {}
