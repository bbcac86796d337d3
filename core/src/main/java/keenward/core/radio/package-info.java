/** Path loss, margins and maps of the radio devices of a site; no verdicts. */
@NullMarked
package keenward.core.radio;

import org.jspecify.annotations.NullMarked;
