package keenward.core.plan;

import java.time.LocalDate;
import keenward.core.quantities.Capacity;

/**
 * The standby battery of a supply.
 *
 * @param capacity capacity of one at the 20-hour rate
 * @param fitted date it was fitted
 * @param count how many are connected in parallel; one where nothing is said
 * @param alike where there are several: whether all are of one type, capacity and age
 */
public record Battery(
    Fact<Capacity> capacity, Fact<LocalDate> fitted, Fact<Integer> count, Fact<Boolean> alike) {}
