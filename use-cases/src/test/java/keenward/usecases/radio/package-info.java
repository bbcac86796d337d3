@NullMarked
package keenward.usecases.radio;

import org.jspecify.annotations.NullMarked;
