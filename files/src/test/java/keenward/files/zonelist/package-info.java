@NullMarked
package keenward.files.zonelist;

import org.jspecify.annotations.NullMarked;
