package keenward.core.electrical.loop;

/**
 * What a reading may mean.
 *
 * @param what in words
 * @param working the arithmetic
 * @param rank how likely, among the others: 1 is the likeliest
 */
public record Diagnosis(String what, String working, int rank) {}
