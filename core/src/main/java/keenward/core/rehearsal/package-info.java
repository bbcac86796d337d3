/**
 * The planned alarm system as a deterministic discrete-event machine: state and input in, state and
 * outputs out.
 */
@NullMarked
package keenward.core.rehearsal;

import org.jspecify.annotations.NullMarked;
