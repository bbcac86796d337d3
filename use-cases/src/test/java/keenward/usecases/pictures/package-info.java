@NullMarked
package keenward.usecases.pictures;

import org.jspecify.annotations.NullMarked;
