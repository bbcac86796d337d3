package keenward.core.dialogue.description;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * What the panel can connect and supply. Absent means that the description does not say.
 *
 * @param zones zone numbers by kind of connection: {@code wired}, {@code wireless}, {@code bus}
 * @param counts how many of other things: {@code partitions}, {@code users}, {@code keypads},
 *     {@code outputs}
 * @param auxiliaryMilliamps current for devices
 * @param chargeMilliamps current that charges the battery
 * @param batteryMilliampHours sizes of battery that fit
 * @param loopOhms highest resistance of a zone's loop
 */
public record Capacity(
    Map<String, NumberRange> zones,
    Map<String, Integer> counts,
    OptionalInt auxiliaryMilliamps,
    OptionalInt chargeMilliamps,
    List<Integer> batteryMilliampHours,
    OptionalInt loopOhms) {
  public Capacity {
    zones = Ordered.copyOf(zones);
    counts = Ordered.copyOf(counts);
    batteryMilliampHours = List.copyOf(batteryMilliampHours);
  }

  /** Numbers from {@code first} to {@code last}, both included. */
  public record NumberRange(int first, int last) {
    public NumberRange {
      if (first < 0 || last < first) {
        throw new IllegalArgumentException(first + ".." + last);
      }
    }

    /** Whether {@code number} lies in the range. */
    public boolean contains(int number) {
      return number >= first && number <= last;
    }
  }
}
