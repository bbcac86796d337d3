/** Rules on records: what is kept, and what is due. */
@NullMarked
package keenward.core.rules.records;

import org.jspecify.annotations.NullMarked;
