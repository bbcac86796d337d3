/**
 * Files in and out: site plans and panel descriptions with the place of every fact, and problems
 * that name it.
 */
@NullMarked
package keenward.files;

import org.jspecify.annotations.NullMarked;
