/** Zone loops as circuits: what a panel reads of them in each state, and what a reading means. */
@NullMarked
package keenward.core.electrical.loop;

import org.jspecify.annotations.NullMarked;
