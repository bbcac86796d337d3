/** Pictures of floors: scans, photos, pages of PDF files. */
@NullMarked
package keenward.files.picture;

import org.jspecify.annotations.NullMarked;
