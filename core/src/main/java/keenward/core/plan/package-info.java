/**
 * The site plan: everything that a technician states about a site, and nothing that is computed
 * from it.
 */
@NullMarked
package keenward.core.plan;

import org.jspecify.annotations.NullMarked;
