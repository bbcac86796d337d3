/** The list of all rules, the check that runs them, and the catalogue page printed from them. */
@NullMarked
package keenward.core.rules.catalogue;

import org.jspecify.annotations.NullMarked;
