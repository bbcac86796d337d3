/**
 * Pictures of a job: floors, timelines, loads. Maps results to what the drawing room takes, and
 * computes nothing.
 */
@NullMarked
package keenward.usecases.pictures;

import org.jspecify.annotations.NullMarked;
