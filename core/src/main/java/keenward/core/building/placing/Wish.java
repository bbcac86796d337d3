package keenward.core.building.placing;

import java.util.List;

/**
 * What detectors are to be placed for.
 *
 * @param share how much of the floor of each room is to be seen, above 0 up to 1
 * @param times by how many detectors: 1 or 2
 * @param rooms names of the rooms; empty means all into which one comes from outside, targets, and
 *     halls, landings and stairs
 * @param types names of the device types to choose from; empty means all that see people
 * @param isAfresh whether the motion detectors of the plan are left aside
 */
public record Wish(
    double share, int times, List<String> rooms, List<String> types, boolean isAfresh) {

  /** Eighty-five hundredths, once. Common practice, no source. */
  public static final Wish USUAL = new Wish(0.85, 1, List.of(), List.of(), false);

  public Wish {
    rooms = List.copyOf(rooms);
    types = List.copyOf(types);
    if (!(share > 0 && share <= 1) || times < 1 || times > 2) {
      throw new IllegalArgumentException("share above 0 up to 1, times 1 or 2");
    }
  }
}
