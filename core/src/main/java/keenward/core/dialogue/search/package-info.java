/**
 * The search for the shortest order: moves over the interpreter's states, a lower bound on what is
 * still to be pressed, and the order of the groups. It hands over a script of what to do; nothing
 * here is trusted before the replay.
 */
@NullMarked
package keenward.core.dialogue.search;

import org.jspecify.annotations.NullMarked;
