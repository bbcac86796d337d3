/**
 * What a site plan wants a panel's memory to hold: which plan fact goes into which field, what the
 * panel cannot express, and what the plan says nothing about.
 */
@NullMarked
package keenward.core.dialogue.planned;

import org.jspecify.annotations.NullMarked;
