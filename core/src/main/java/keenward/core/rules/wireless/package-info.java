/** Rules on radio devices. */
@NullMarked
package keenward.core.rules.wireless;

import org.jspecify.annotations.NullMarked;
