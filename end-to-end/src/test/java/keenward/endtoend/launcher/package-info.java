/** The launcher, tried in a folder of its own with a stand-in for Maven. */
@NullMarked
package keenward.endtoend.launcher;

import org.jspecify.annotations.NullMarked;
