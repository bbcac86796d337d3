/** One class a command. */
@NullMarked
package keenward.cli.command;

import org.jspecify.annotations.NullMarked;
