/** Results as JSON of the shape that docs/reference/output.md documents. */
@NullMarked
package keenward.cli.json;

import org.jspecify.annotations.NullMarked;
