@NullMarked
package keenward.usecases.sample;

import org.jspecify.annotations.NullMarked;
