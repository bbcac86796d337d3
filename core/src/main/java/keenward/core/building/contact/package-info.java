/** How far a leaf opens before its contact tells of it. */
@NullMarked
package keenward.core.building.contact;

import org.jspecify.annotations.NullMarked;
