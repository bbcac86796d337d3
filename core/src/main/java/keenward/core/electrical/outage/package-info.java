/** What happens in a long mains failure: discharge, devices that die, charging again. */
@NullMarked
package keenward.core.electrical.outage;

import org.jspecify.annotations.NullMarked;
