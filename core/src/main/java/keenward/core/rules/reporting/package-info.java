/** Rules on reporting: what reaches the monitoring centre. */
@NullMarked
package keenward.core.rules.reporting;

import org.jspecify.annotations.NullMarked;
