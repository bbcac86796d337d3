/** Rules on the survey: what of the building is watched. */
@NullMarked
package keenward.core.rules.survey;

import org.jspecify.annotations.NullMarked;
