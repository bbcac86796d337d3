/** The site plan as a file: its shape, its reader, its examples. */
@NullMarked
package keenward.files.plan;

import org.jspecify.annotations.NullMarked;
