/** The papers of a job, and the folder that holds all its results. */
@NullMarked
package keenward.usecases.pack;

import org.jspecify.annotations.NullMarked;
