package keenward.drawing.floor;

import keenward.core.rules.Involved;
import keenward.core.rules.Severity;

/**
 * A flag at the places that a finding is about.
 *
 * @param label short text on the flag, such as the finding's number in a list beside the drawing
 * @param severity how much it matters
 * @param involved what it is about; what is not on the floor gets no flag
 */
public record FloorMark(String label, Severity severity, Involved involved) {}
