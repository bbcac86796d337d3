@NullMarked
package keenward.files.table;

import org.jspecify.annotations.NullMarked;
