/** What the documentation says, run and compared with what the program does. */
@NullMarked
package keenward.endtoend.docs;

import org.jspecify.annotations.NullMarked;
