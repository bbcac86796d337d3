package keenward.core.rules;

/**
 * A figure that a rule judges by.
 *
 * @param name what it is
 * @param value its value, as printed
 * @param unit its unit; empty for a plain number
 */
public record Parameter(String name, String value, String unit) {}
