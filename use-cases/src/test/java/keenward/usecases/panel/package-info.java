@NullMarked
package keenward.usecases.panel;

import org.jspecify.annotations.NullMarked;
