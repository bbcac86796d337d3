/**
 * Panel descriptions and found memories as files: their shape, schema and reference, and the reader
 * that turns them into {@code keenward.core.dialogue} values with every fault at its place.
 */
@NullMarked
package keenward.files.panel;

import org.jspecify.annotations.NullMarked;
