package keenward.core.dialogue.planned;

import keenward.core.dialogue.machine.Slot;

/**
 * A fact that the plan calls unknown, so that its slot is left alone.
 *
 * @param slot the slot
 * @param line the line to add to the plan
 */
public record NotYetKnown(Slot slot, String line) {}
