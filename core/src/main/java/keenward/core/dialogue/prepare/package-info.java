/** Makes orders and proves them in the same run: what the other rooms call. */
@NullMarked
package keenward.core.dialogue.prepare;

import org.jspecify.annotations.NullMarked;
