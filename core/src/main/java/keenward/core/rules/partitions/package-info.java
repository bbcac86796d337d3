/** Rules on partitions: parts of the system that are armed on their own. */
@NullMarked
package keenward.core.rules.partitions;

import org.jspecify.annotations.NullMarked;
