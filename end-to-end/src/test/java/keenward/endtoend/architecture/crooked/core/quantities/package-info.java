/** A crooked house, so that each rule is seen to fail. */
@NullMarked
package keenward.endtoend.architecture.crooked.core.quantities;

import org.jspecify.annotations.NullMarked;
