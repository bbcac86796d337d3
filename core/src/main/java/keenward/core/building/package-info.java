/**
 * The building that a site plan draws: walls made from shared room edges, openings on their walls,
 * rooms and the passages between them, and what of the drawing does not fit together.
 */
@NullMarked
package keenward.core.building;

import org.jspecify.annotations.NullMarked;
