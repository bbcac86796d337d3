/**
 * What a panel description says: capacity, memory, screens, keypads and manners, as immutable
 * values. Times are whole tenths of a second. Names are those of the description file.
 */
@NullMarked
package keenward.core.dialogue.description;

import org.jspecify.annotations.NullMarked;
