/**
 * Standby batteries, charging, conductors and voltage drop: one method a class, each with its
 * source, without verdicts.
 */
@NullMarked
package keenward.core.electrical;

import org.jspecify.annotations.NullMarked;
