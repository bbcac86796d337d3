@NullMarked
package keenward.usecases.trace;

import org.jspecify.annotations.NullMarked;
