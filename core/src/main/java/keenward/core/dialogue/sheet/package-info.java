/** What to enter by hand at a panel without a description: unproved, never an order. */
@NullMarked
package keenward.core.dialogue.sheet;

import org.jspecify.annotations.NullMarked;
