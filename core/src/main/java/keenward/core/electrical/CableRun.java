package keenward.core.electrical;

import java.util.List;
import keenward.core.plan.Device;
import keenward.core.plan.Fact;
import keenward.core.quantities.Voltage;

/**
 * The cables from a supply to one device and the voltage that arrives there, with every device on
 * the network drawing its current.
 *
 * @param device the device at the far end
 * @param supply name of the supply
 * @param cables names of the cables, from the supply outwards
 * @param lines one line for each cable, then the sum
 * @param volts voltage at the device with the battery at the end of its discharge and every device
 *     in alarm; 0 V when the network collapses
 * @param isCollapsed whether the loads get no steady voltage
 * @param remedies changes that lift a voltage below the device's least to it, each on its own
 */
public record CableRun(
    Device device,
    String supply,
    List<String> cables,
    List<Explained> lines,
    Explained volts,
    boolean isCollapsed,
    List<Remedy> remedies) {

  /** Copies the lists. */
  public CableRun {
    cables = List.copyOf(cables);
    lines = List.copyOf(lines);
    remedies = List.copyOf(remedies);
  }

  /** Whether less arrives than the device needs, as far as that is known. */
  public boolean isTooLow() {
    return minimum().find().filter(least -> volts.value() < least.volts()).isPresent();
  }

  /** Least voltage at which the device works, as stated. */
  public Fact<Voltage> minimum() {
    return device.traits().minimumVoltage();
  }
}
