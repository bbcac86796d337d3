/** Rehearsing a site: by a script, or by the scenarios worth seeing. */
@NullMarked
package keenward.usecases.rehearse;

import org.jspecify.annotations.NullMarked;
