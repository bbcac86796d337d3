/**
 * The contract of the rules that judge a site plan: what a rule states about itself, what it may
 * look at, and what it reports. Each family of rules is a package below this one, each rule a file;
 * the list of them is in {@code catalogue}.
 */
@NullMarked
package keenward.core.rules;

import org.jspecify.annotations.NullMarked;
