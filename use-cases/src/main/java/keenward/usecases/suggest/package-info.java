/** Where detectors and keypads could go. */
@NullMarked
package keenward.usecases.suggest;

import org.jspecify.annotations.NullMarked;
