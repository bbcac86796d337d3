/** How the radio devices of a site are heard. */
@NullMarked
package keenward.usecases.radio;

import org.jspecify.annotations.NullMarked;
