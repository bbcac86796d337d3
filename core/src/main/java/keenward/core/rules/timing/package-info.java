/** Rules on timing: delays, windows and limits. */
@NullMarked
package keenward.core.rules.timing;

import org.jspecify.annotations.NullMarked;
