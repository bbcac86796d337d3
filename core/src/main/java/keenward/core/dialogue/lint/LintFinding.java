package keenward.core.dialogue.lint;

/**
 * Something that the linter says about a description.
 *
 * @param severity how bad it is
 * @param place where in the description, as a JSON Pointer (RFC 6901)
 * @param what what is wrong
 * @param remedy what to do
 */
public record LintFinding(LintSeverity severity, String place, String what, String remedy) {}
