/** Rules about magnetic contacts. */
@NullMarked
package keenward.core.rules.contacts;

import org.jspecify.annotations.NullMarked;
