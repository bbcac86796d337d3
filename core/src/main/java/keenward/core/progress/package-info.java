/**
 * How long work says how far it has come, and how it is stopped. Used by every other package of the
 * core.
 */
@NullMarked
package keenward.core.progress;

import org.jspecify.annotations.NullMarked;
