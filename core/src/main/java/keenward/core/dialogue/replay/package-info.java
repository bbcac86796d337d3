/**
 * Replays orders against a panel's description: the proof. Shares nothing with the search but the
 * interpreter and the types of an order.
 */
@NullMarked
package keenward.core.dialogue.replay;

import org.jspecify.annotations.NullMarked;
