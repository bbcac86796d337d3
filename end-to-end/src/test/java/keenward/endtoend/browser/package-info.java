/** Pages, in a real browser. */
@NullMarked
package keenward.endtoend.browser;

import org.jspecify.annotations.NullMarked;
