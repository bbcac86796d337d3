/** Reading site plans from files. */
@NullMarked
package keenward.usecases.site;

import org.jspecify.annotations.NullMarked;
