package keenward.core.proof;

/**
 * A time that is measured.
 *
 * @param milliseconds the time in force
 * @param words the same in words
 * @param source where the value in force comes from
 */
public record MeasuredTime(long milliseconds, String words, String source) {}
