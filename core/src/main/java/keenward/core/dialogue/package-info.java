/**
 * Panel descriptions and their meaning: what a control panel can hold, how its programming dialogue
 * goes, and the one interpreter that everything else (linter, compiler, replayer) asks.
 */
@NullMarked
package keenward.core.dialogue;

import org.jspecify.annotations.NullMarked;
