/** A crooked house, so that each rule is seen to fail. */
@NullMarked
package keenward.endtoend.architecture.crooked.core.plan;

import org.jspecify.annotations.NullMarked;
