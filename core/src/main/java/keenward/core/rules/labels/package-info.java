/** Rules on labels: names at the keypad and on paper. */
@NullMarked
package keenward.core.rules.labels;

import org.jspecify.annotations.NullMarked;
