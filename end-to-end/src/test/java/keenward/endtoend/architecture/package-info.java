/** The walls of the house, held by tests that say why a wall stands where it does. */
@NullMarked
package keenward.endtoend.architecture;

import org.jspecify.annotations.NullMarked;
