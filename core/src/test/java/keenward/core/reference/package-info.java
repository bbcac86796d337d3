/** Reading of published figures for tests. */
@NullMarked
package keenward.core.reference;

import org.jspecify.annotations.NullMarked;
