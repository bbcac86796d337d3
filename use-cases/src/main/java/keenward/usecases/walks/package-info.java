/** How long people walk on a site. */
@NullMarked
package keenward.usecases.walks;

import org.jspecify.annotations.NullMarked;
