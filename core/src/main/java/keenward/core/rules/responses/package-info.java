/** Rules on responses: what the system does when a zone is violated. */
@NullMarked
package keenward.core.rules.responses;

import org.jspecify.annotations.NullMarked;
