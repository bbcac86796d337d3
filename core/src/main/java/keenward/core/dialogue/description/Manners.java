package keenward.core.dialogue.description;

import java.util.List;
import java.util.Optional;

/**
 * How the panel behaves around programming.
 *
 * @param keepsAtOnce whether a stored field is committed at once, rather than by a keep or on
 *     leaving
 * @param idle way of leaving when left alone, if it drops out
 * @param idleTenths idle time after which it does; 0 if it never does
 * @param powerLost way of leaving when power fails
 * @param powerUpTenths how long the panel is deaf after power came back
 * @param whileOpen what the panel does not do while programming is open, in its own words
 */
public record Manners(
    boolean keepsAtOnce,
    Optional<Leaving> idle,
    int idleTenths,
    Leaving powerLost,
    int powerUpTenths,
    List<String> whileOpen) {
  public Manners {
    whileOpen = List.copyOf(whileOpen);
  }
}
