package keenward.drawing.voltage;

import java.util.List;
import java.util.Optional;

/**
 * Voltages along the cables of one supply.
 *
 * @param supply its name
 * @param states the states in words, in the order in which every list of voltages has them
 * @param stretches cables
 * @param devices devices on them
 */
public record VoltageProfile(
    String supply, List<String> states, List<Stretch> stretches, List<Device> devices) {

  public VoltageProfile {
    states = List.copyOf(states);
    stretches = List.copyOf(stretches);
    devices = List.copyOf(devices);
  }

  /** A place along the cables: how far from the supply, and its voltage in each state. */
  public record Place(double metres, List<Optional<Double>> volts) {
    public Place {
      volts = List.copyOf(volts);
    }
  }

  /** A cable between two places. */
  public record Stretch(Place near, Place far) {}

  /** A device with the least voltage that it needs, where that is known. */
  public record Device(String name, Place place, Optional<Double> leastVolts) {}
}
