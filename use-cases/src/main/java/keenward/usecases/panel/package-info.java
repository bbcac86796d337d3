/** Finding the panel description of a site. */
@NullMarked
package keenward.usecases.panel;

import org.jspecify.annotations.NullMarked;
