/** What the tests of core share. */
@NullMarked
package keenward.core;

import org.jspecify.annotations.NullMarked;
