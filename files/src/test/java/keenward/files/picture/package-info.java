@NullMarked
package keenward.files.picture;

import org.jspecify.annotations.NullMarked;
