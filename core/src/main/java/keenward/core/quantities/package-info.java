/**
 * Physical quantities with their unit in the type, and the only parser of "22 AWG", "36 m" or "120
 * ft".
 */
@NullMarked
package keenward.core.quantities;

import org.jspecify.annotations.NullMarked;
