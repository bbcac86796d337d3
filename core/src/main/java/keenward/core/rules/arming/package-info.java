/** Rules on arming: what is live in which mode. */
@NullMarked
package keenward.core.rules.arming;

import org.jspecify.annotations.NullMarked;
