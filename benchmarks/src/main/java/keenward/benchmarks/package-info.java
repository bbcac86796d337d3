/** How fast the geometry is, beside the plain way with libraries. Run by {@code benchmarks/jmh}. */
@NullMarked
package keenward.benchmarks;

import org.jspecify.annotations.NullMarked;
