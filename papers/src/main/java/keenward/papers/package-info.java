/**
 * Hand-over documents of a site: templates filled with what was computed, as HTML files and one
 * PDF. No calculation.
 */
@NullMarked
package keenward.papers;

import org.jspecify.annotations.NullMarked;
