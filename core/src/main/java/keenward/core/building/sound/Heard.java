package keenward.core.building.sound;

import java.util.List;
import keenward.core.plan.Device;

/**
 * A sounder as heard at one place.
 *
 * @param sounder the sounder
 * @param decibels how loud, A-weighted
 * @param metres how far the sound has come
 * @param through walls, leaves and panes that it has passed, in words
 */
public record Heard(Device sounder, double decibels, double metres, List<String> through) {

  public Heard {
    through = List.copyOf(through);
  }
}
