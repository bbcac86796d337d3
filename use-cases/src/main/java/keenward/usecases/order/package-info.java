/** From a plan to keystrokes with their proof, or to an entry sheet. */
@NullMarked
package keenward.usecases.order;

import org.jspecify.annotations.NullMarked;
