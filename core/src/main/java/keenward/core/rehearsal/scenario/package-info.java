/** Scenario scripts, and the timelines that they lead to, with the reason for every row. */
@NullMarked
package keenward.core.rehearsal.scenario;

import org.jspecify.annotations.NullMarked;
