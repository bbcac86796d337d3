/** Writing results so that nobody ever finds half of them. */
@NullMarked
package keenward.files.output;

import org.jspecify.annotations.NullMarked;
