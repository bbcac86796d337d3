package keenward.core.dialogue.order;

import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;

/**
 * A field of unknown value that is overwritten although the panel does not show it there first.
 *
 * @param slot the field
 * @param after what it holds then
 * @param atStep number of the step that overwrites it
 */
public record UnseenOverwrite(Slot slot, Value after, int atStep) {}
