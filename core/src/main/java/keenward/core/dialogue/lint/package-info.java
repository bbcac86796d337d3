/**
 * Proofs that a panel description makes sense: every screen can be reached and safely left, every
 * field written and read, no key means two things, all text fits.
 */
@NullMarked
package keenward.core.dialogue.lint;

import org.jspecify.annotations.NullMarked;
