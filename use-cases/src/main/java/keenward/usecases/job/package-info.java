/** The whole job of a site: everything that is computed from its plan, and the pack of papers. */
@NullMarked
package keenward.usecases.job;

import org.jspecify.annotations.NullMarked;
