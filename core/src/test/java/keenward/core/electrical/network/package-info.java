@NullMarked
package keenward.core.electrical.network;

import org.jspecify.annotations.NullMarked;
