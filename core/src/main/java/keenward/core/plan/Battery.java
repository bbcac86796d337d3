package keenward.core.plan;

import java.time.LocalDate;
import keenward.core.quantities.Capacity;

/**
 * The standby battery of a supply.
 *
 * @param capacity capacity at the 20-hour rate
 * @param fitted date it was fitted
 */
public record Battery(Fact<Capacity> capacity, Fact<LocalDate> fitted) {}
