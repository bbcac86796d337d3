/**
 * The walks of people who come in: from an entry door to the keypad where they disarm, and what
 * sees them on the way.
 */
@NullMarked
package keenward.core.rules.walk;

import org.jspecify.annotations.NullMarked;
