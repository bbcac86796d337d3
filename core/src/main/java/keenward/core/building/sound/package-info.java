/** How loud the alarm is in a room. */
@NullMarked
package keenward.core.building.sound;

import org.jspecify.annotations.NullMarked;
