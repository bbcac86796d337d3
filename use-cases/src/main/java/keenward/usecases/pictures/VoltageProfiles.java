package keenward.usecases.pictures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import keenward.core.electrical.CableNetwork;
import keenward.core.electrical.CableState;
import keenward.core.electrical.PowerAssessment;
import keenward.core.plan.SitePlan;
import keenward.core.quantities.Voltage;
import keenward.drawing.voltage.VoltageProfile;

/** Voltages along the cables of each supply, to be drawn. */
public final class VoltageProfiles {

  private VoltageProfiles() {}

  /** One profile for each supply that has networks. */
  public static List<VoltageProfile> of(SitePlan plan, PowerAssessment power) {
    return power.networksBySupply().entrySet().stream()
        .map(each -> profile(plan, each.getKey(), each.getValue()))
        .toList();
  }

  private static VoltageProfile profile(SitePlan plan, String supply, List<CableNetwork> networks) {
    Map<String, Optional<Double>> needed = new HashMap<>();
    plan.devices()
        .forEach(device ->
            needed.put(device.name(), device.traits().minimumVoltage().find().map(Voltage::volts)));
    List<VoltageProfile.Stretch> stretches = new ArrayList<>();
    List<VoltageProfile.Device> devices = new ArrayList<>();
    for (CableNetwork network : networks) {
      Map<String, VoltageProfile.Place> places = new HashMap<>();
      places.put(supply, new VoltageProfile.Place(0, volts(network.atSupply())));
      for (CableNetwork.Place place : network.places()) {
        VoltageProfile.Place drawn = new VoltageProfile.Place(place.metres(), volts(place.volts()));
        places.put(place.name(), drawn);
        if (place.isDevice()) {
          devices.add(
              new VoltageProfile.Device(
                  place.name(), drawn, needed.getOrDefault(place.name(), Optional.empty())));
        }
      }
      for (CableNetwork.Line line : network.cables()) {
        VoltageProfile.Place near = places.get(line.cable().from());
        VoltageProfile.Place far = places.get(line.cable().to());
        if (near != null && far != null) {
          stretches.add(new VoltageProfile.Stretch(near, far));
        }
      }
    }
    return new VoltageProfile(
        supply, Stream.of(CableState.values()).map(CableState::words).toList(), stretches, devices);
  }

  private static List<Optional<Double>> volts(Map<CableState, Double> volts) {
    return Stream.of(CableState.values())
        .map(state -> Optional.ofNullable(volts.get(state)))
        .toList();
  }
}
