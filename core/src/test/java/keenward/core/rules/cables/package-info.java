@NullMarked
package keenward.core.rules.cables;

import org.jspecify.annotations.NullMarked;
