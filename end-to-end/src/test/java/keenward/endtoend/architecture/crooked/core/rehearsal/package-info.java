/** A crooked house, so that each rule is seen to fail. */
@NullMarked
package keenward.endtoend.architecture.crooked.core.rehearsal;

import org.jspecify.annotations.NullMarked;
