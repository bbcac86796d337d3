package keenward.drawing.floor;

import java.util.Optional;
import keenward.core.rules.Severity;
import keenward.drawing.svg.Box;

/**
 * A small label beside a symbol: zone numbers, or the flag of a mark.
 *
 * @param owner name of the thing it belongs to
 * @param text its text
 * @param box what it covers
 * @param leader where a thin line to its symbol ends, when it stands apart
 * @param severity of a mark; empty for zone numbers
 */
record Chip(
    String owner, String text, Box box, Optional<Spot> leader, Optional<Severity> severity) {}
