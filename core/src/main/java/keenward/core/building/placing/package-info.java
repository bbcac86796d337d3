/**
 * Where detectors and keypads could go: a starting point for whoever surveys the site, never a
 * design.
 */
@NullMarked
package keenward.core.building.placing;

import org.jspecify.annotations.NullMarked;
