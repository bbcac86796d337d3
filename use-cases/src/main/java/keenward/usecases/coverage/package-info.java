/** What the detectors of a site see. */
@NullMarked
package keenward.usecases.coverage;

import org.jspecify.annotations.NullMarked;
