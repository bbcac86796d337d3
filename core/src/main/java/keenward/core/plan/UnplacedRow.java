package keenward.core.plan;

/**
 * A row of an import that did not fit; nothing is dropped, and the checks keep mentioning it.
 *
 * @param text the row as it came
 * @param why why it did not fit
 */
public record UnplacedRow(String text, String why) {}
