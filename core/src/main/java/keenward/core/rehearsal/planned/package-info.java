/** From a site plan to the system that is rehearsed, and to the scenarios worth seeing. */
@NullMarked
package keenward.core.rehearsal.planned;

import org.jspecify.annotations.NullMarked;
