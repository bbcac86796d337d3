/**
 * What a file has to look like, said once: from a shape come the check, the typed reading, the JSON
 * Schema and the reference page.
 */
@NullMarked
package keenward.files.shape;

import org.jspecify.annotations.NullMarked;
