/** The workbench: local pages over the use cases, one a stage. */
@NullMarked
package keenward.web;

import org.jspecify.annotations.NullMarked;
