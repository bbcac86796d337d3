/** A crooked house, so that each rule is seen to fail. */
@NullMarked
package keenward.endtoend.architecture.crooked.files;

import org.jspecify.annotations.NullMarked;
