package keenward.core.plan;

import keenward.core.quantities.Span;

/**
 * The keypad stops listening after wrong codes.
 *
 * @param after number of wrong codes
 * @param period how long it stops
 */
public record KeypadLockOut(int after, Fact<Span> period) {}
