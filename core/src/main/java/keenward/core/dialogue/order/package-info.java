/**
 * A work order: what a person presses, step by step, to bring a panel's memory from found to
 * planned, what the display shows meanwhile, and the proof of it. Times are whole tenths of a
 * second. Values and words only: nothing here searches or replays.
 */
@NullMarked
package keenward.core.dialogue.order;

import org.jspecify.annotations.NullMarked;
