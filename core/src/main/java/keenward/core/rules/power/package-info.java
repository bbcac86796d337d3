/** Rules on power: supplies, batteries and cables. */
@NullMarked
package keenward.core.rules.power;

import org.jspecify.annotations.NullMarked;
