/**
 * The program seen from outside, as a person meets it: the launcher, the command line, the browser.
 */
@NullMarked
package keenward.endtoend;

import org.jspecify.annotations.NullMarked;
