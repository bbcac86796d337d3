/** Rules on the entry route: the way from an entry door to the keypad. */
@NullMarked
package keenward.core.rules.entry;

import org.jspecify.annotations.NullMarked;
