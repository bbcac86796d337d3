/** Rules on addressing: which device and input stands behind which number. */
@NullMarked
package keenward.core.rules.addressing;

import org.jspecify.annotations.NullMarked;
