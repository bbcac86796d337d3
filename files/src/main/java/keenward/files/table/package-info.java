/** Tables of cells: CSV and XLSX, in and out. */
@NullMarked
package keenward.files.table;

import org.jspecify.annotations.NullMarked;
