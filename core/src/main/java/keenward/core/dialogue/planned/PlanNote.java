package keenward.core.dialogue.planned;

import keenward.core.dialogue.machine.Slot;

/**
 * Something to know about a value that goes into the panel: how a name was written, or that a
 * regime asks for it.
 *
 * @param slot the slot it is about
 * @param text the note
 */
public record PlanNote(Slot slot, String text) {}
