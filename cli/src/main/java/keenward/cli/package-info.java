/** The command line: a thin face of the use cases. */
@NullMarked
package keenward.cli;

import org.jspecify.annotations.NullMarked;
