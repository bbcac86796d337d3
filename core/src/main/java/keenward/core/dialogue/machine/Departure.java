package keenward.core.dialogue.machine;

/**
 * How programming was left last.
 *
 * @param way name of the way of leaving
 * @param saved whether what was entered was kept
 * @param locked whether it locked programming
 * @param safe whether the description calls it safe
 */
public record Departure(String way, boolean saved, boolean locked, boolean safe) {}
