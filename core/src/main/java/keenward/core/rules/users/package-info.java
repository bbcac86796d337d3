/** Rules on users: people with a code. */
@NullMarked
package keenward.core.rules.users;

import org.jspecify.annotations.NullMarked;
