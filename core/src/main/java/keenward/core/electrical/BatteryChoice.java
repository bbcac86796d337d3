package keenward.core.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import keenward.core.plan.Supply;

/**
 * The next usual size above a need, and what stands in its way.
 *
 * @param ampereHours the size; empty when the need is above every usual size
 * @param obstacles why this supply cannot have it; empty when it can, as far as is known
 */
public record BatteryChoice(OptionalDouble ampereHours, List<String> obstacles) {

  /** Copies the list. */
  public BatteryChoice {
    obstacles = List.copyOf(obstacles);
  }

  /** The choice for a need of a supply, whose charger has to keep the strictest recharge rule. */
  public static BatteryChoice of(
      double neededAmpereHours, Supply supply, Optional<RechargeRule> recharge) {
    OptionalDouble size = BatterySizes.nextUp(neededAmpereHours);
    if (size.isEmpty()) {
      return new BatteryChoice(
          size,
          List.of(
              "no usual size is as large as "
                  + Figures.text(neededAmpereHours)
                  + " Ah: share the load between supplies"));
    }
    List<String> obstacles = new ArrayList<>();
    supply
        .largestBattery()
        .find()
        .filter(largest -> largest.ampereHours() < size.getAsDouble())
        .ifPresent(largest ->
            obstacles.add(
                "the supply holds at most "
                    + largest.written()
                    + ", "
                    + text(size)
                    + " is needed"));
    tooSlow(size.getAsDouble(), supply, recharge).ifPresent(obstacles::add);
    return new BatteryChoice(size, obstacles);
  }

  /** The choice in words. */
  public String words() {
    if (ampereHours.isEmpty()) {
      return String.join("; ", obstacles);
    }
    return obstacles.isEmpty()
        ? text(ampereHours)
        : text(ampereHours) + ", but " + String.join("; ", obstacles);
  }

  private static Optional<String> tooSlow(
      double size, Supply supply, Optional<RechargeRule> recharge) {
    if (recharge.isEmpty() || !supply.chargeCurrent().isGiven()) {
      return Optional.empty();
    }
    RechargeRule rule = recharge.get();
    double amperes = supply.chargeCurrent().find().orElseThrow().milliamps() / 1000;
    double needed = Charger.amperes(0, size * rule.share(), rule.hours());
    if (amperes >= needed) {
      return Optional.empty();
    }
    return Optional.of(
        "charging "
            + Figures.text(size)
            + " Ah to "
            + rule.words()
            + " takes "
            + Figures.text(needed * 1000)
            + " mA, the supply gives "
            + Figures.text(amperes * 1000)
            + " mA");
  }

  private static String text(OptionalDouble size) {
    return Figures.text(size.getAsDouble()) + " Ah";
  }
}
