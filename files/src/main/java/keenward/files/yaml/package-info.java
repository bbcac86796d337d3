/**
 * A strict, small YAML: text to a tree of nodes that know their place, and text edits at those
 * places.
 */
@NullMarked
package keenward.files.yaml;

import org.jspecify.annotations.NullMarked;
