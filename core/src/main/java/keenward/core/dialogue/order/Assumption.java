package keenward.core.dialogue.order;

import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;

/**
 * Something that the order takes for granted because the found memory does not say it.
 *
 * @param slot the field
 * @param holds what it is taken to hold
 * @param what what is taken for granted, in a sentence
 */
public record Assumption(Slot slot, Value holds, String what) {}
