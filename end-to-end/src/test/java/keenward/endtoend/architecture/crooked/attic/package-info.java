/** A crooked house, so that each rule is seen to fail. */
@NullMarked
package keenward.endtoend.architecture.crooked.attic;

import org.jspecify.annotations.NullMarked;
