/** The rules of core, run on files: their examples and the demo sites. */
@NullMarked
package keenward.files.rules;

import org.jspecify.annotations.NullMarked;
