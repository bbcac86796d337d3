package keenward.drawing.load;

import java.util.Optional;

/**
 * The sums of one supply, as the battery method worked them out.
 *
 * @param supply its name
 * @param standbyMilliamps load at rest
 * @param alarmMilliamps load in alarm
 * @param ratingMilliamps what the supply may give; empty when not stated
 * @param neededAmpereHours capacity that the battery must have; empty when not assessed
 * @param fittedAmpereHours capacity that is fitted; empty when none or not stated
 * @param enough whether the fitted battery is enough; empty when that can't be judged
 * @param atLeast whether a current is unknown, so that loads and need are at least what is given
 */
public record SupplyLoad(
    String supply,
    double standbyMilliamps,
    double alarmMilliamps,
    Optional<Double> ratingMilliamps,
    Optional<Double> neededAmpereHours,
    Optional<Double> fittedAmpereHours,
    Optional<Boolean> enough,
    boolean atLeast) {}
