/**
 * What has to be tested on site, what keypad and monitoring centre must show, and what each proof
 * depends on.
 */
@NullMarked
package keenward.core.proof;

import org.jspecify.annotations.NullMarked;
