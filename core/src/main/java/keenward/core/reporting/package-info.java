/**
 * Reporting to a monitoring centre: the DC-05 event codes and message, and the DC-09 frame around
 * it, as values and bytes; sending and receiving them happens elsewhere.
 */
@NullMarked
package keenward.core.reporting;

import org.jspecify.annotations.NullMarked;
