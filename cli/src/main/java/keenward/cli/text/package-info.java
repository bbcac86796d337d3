/** Results as text for people at a terminal. */
@NullMarked
package keenward.cli.text;

import org.jspecify.annotations.NullMarked;
