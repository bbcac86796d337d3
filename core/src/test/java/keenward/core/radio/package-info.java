/** Tests of radio sums. */
@NullMarked
package keenward.core.radio;

import org.jspecify.annotations.NullMarked;
