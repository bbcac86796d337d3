/**
 * Rehearsal and dialogue as JavaScript: what a page calls, and the small samples that it can try.
 */
@NullMarked
package keenward.inbrowser;

import org.jspecify.annotations.NullMarked;
