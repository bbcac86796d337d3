package keenward.core.radio;

import java.util.Comparator;
import java.util.List;
import keenward.core.plan.Device;

/**
 * How a sender reaches a receiver.
 *
 * @param links from the sender, over repeaters if any, to the receiver
 */
public record RadioRoute(List<RadioLink> links) {

  public RadioRoute {
    links = List.copyOf(links);
  }

  /** Who sends. */
  public Device sender() {
    return links.getFirst().sender();
  }

  /** The link with the least margin. */
  public RadioLink weakest() {
    return links.stream().min(Comparator.comparingDouble(RadioLink::marginDecibels)).orElseThrow();
  }

  /** Margin of the weakest link. */
  public double marginDecibels() {
    return weakest().marginDecibels();
  }

  /** Whether every link keeps its reserve. */
  public boolean isEnough() {
    return links.stream().allMatch(RadioLink::isEnough);
  }

  /** How many repeaters it passes. */
  public int repeaters() {
    return links.size() - 1;
  }
}
